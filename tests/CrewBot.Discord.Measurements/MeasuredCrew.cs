using CrewBot.Core.Fish;
using CrewBot.Discord.StandIn;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using UnitsNet.Units;

namespace CrewBot.Discord.Measurements;

/// <summary>The invented crew that asks: it has said how it speaks and where it fishes, and has a winter in its log.</summary>
internal static class MeasuredCrew
{
    private const int Days = 30;
    private const int FishOfADay = 10;

    /// <summary>Writes it into a new file.</summary>
    public static async Task WriteAsync(string path)
    {
        await using var database = await Database.OpenAsync(path, CancellationToken.None);
        await database.WriteAsync(StandInData.Id(StandInData.GuildId), WriteAsync, CancellationToken.None);
    }

    private static async Task WriteAsync(CrewSession session)
    {
        var settings = new CrewRepository(session);
        await settings.SetUnitsAsync(UnitSystem.Customary);
        await settings.SetZoneAsync("America/Chicago");
        var water = await new WaterRepository(session).AddAsync("Loon Basin");
        var asker = await new MemberRepository(session).FindOrAddAsync(StandInData.Id(StandInData.PersonId), "Ada of Loon Basin");
        var spells = new LineSpellRepository(session);
        var catches = new CatchRepository(session);
        var depth = ExactLength.From(24, LengthUnit.Foot);
        for (var day = 1; day <= Days; day++)
        {
            var down = DateTimeOffset.UtcNow.AddDays(-day);
            var presentation = day % 2 == 0 ? "jigging-spoon" : "set-bait";
            var spell = await spells.AddAsync(asker.Id, water, presentation, 2, down, "negative", depth);
            await spells.CloseAsync(spell, down.AddHours(4));
            for (var fish = 1; fish <= FishOfADay; fish++)
            {
                var at = down.AddMinutes(20 * fish);
                await catches.AddAsync(new CatchEntry
                {
                    MemberId = asker.Id,
                    WaterId = water,
                    Presentation = presentation,
                    Mood = "negative",
                    Depth = depth,
                    Species = "walleye",
                    Length = ExactLength.From(14 + fish, LengthUnit.Inch),
                    CaughtAt = at,
                    LoggedAt = at,
                });
            }
        }
    }
}
