using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using UnitsNet.Units;

namespace CrewBot.Benchmarks.Logs;

/// <summary>
/// An invented crew's log, the same at every run: 25 anglers, four winters of 25 days, ten spells of two lines a day and five
/// fish a spell come to 5,000 fish. A fifth of the fish have a photo, a quarter a note, three in twenty were weighed.
/// </summary>
internal sealed class GeneratedLog(int crew)
{
    public const int Anglers = 25;
    public const int Fish = Winters * Days * Spells * FishOfASpell;

    private const int Winters = 4;
    private const int Days = 25;
    private const int Spells = 10;
    private const int FishOfASpell = 5;

    // Lengths in quarter inches.
    private static readonly (string Key, int Shortest, int Longest)[] Species =
    [
        ("walleye", 48, 116), ("yellow-perch", 24, 56), ("northern-pike", 72, 160), ("black-crappie", 28, 58), ("bluegill", 22, 42),
        ("lake-trout", 64, 144), ("burbot", 60, 130), ("sauger", 40, 80),
    ];

    private static readonly string[] Presentations = ["jigging-spoon", "small-jig", "set-bait", "rattle-bait", "swimming-jig"];
    private static readonly string[] Moods = ["negative", "neutral", "positive"];
    private static readonly DateTimeOffset FirstDay = new(2023, 12, 15, 8, 0, 0, TimeSpan.FromHours(-6));

    private readonly Random _random = new(20270315 + crew);
    private readonly List<long> _anglers = [];
    private readonly List<long> _waters = [];

    /// <summary>Writes it.</summary>
    public async Task WriteAsync(CrewSession session)
    {
        var members = new MemberRepository(session);
        for (var angler = 1; angler <= Anglers; angler++)
        {
            _anglers.Add((await members.FindOrAddAsync(MillionCatches.AnglerOf(angler), $"Angler {angler}")).Id);
        }

        var waters = new WaterRepository(session);
        foreach (var name in (string[])["Loon Basin", "Tamarack Bay", "Otter Narrows"])
        {
            _waters.Add(await waters.AddAsync(name));
        }

        for (var day = 0; day < Winters * Days; day++)
        {
            await WriteDayAsync(session, FirstDay.AddYears(day / Days).AddDays(day % Days * 3));
        }
    }

    private async Task WriteDayAsync(CrewSession session, DateTimeOffset morning)
    {
        var spells = new LineSpellRepository(session);
        var caught = new List<CatchEntry>();
        for (var number = 0; number < Spells; number++)
        {
            var down = morning.AddMinutes(_random.Next(360));
            var blank = new CatchEntry
            {
                MemberId = Any(_anglers),
                WaterId = Any(_waters),
                Presentation = Any(Presentations),
                Mood = Any(Moods),
                Depth = ExactLength.From(8 + _random.Next(32), LengthUnit.Foot),
                Species = "",
                CaughtAt = down,
                LoggedAt = down,
            };
            var spell = await spells.AddAsync(blank.MemberId, blank.WaterId, blank.Presentation, 2, down, blank.Mood, blank.Depth);
            await spells.CloseAsync(spell, down.AddHours(2));
            caught.AddRange(Enumerable.Range(0, FishOfASpell).Select(_ => Caught(blank)));
        }

        var catches = new CatchRepository(session);
        foreach (var fish in caught.OrderBy(fish => fish.CaughtAt))
        {
            await catches.AddAsync(fish);
        }
    }

    private CatchEntry Caught(CatchEntry blank)
    {
        var (species, shortest, longest) = Any(Species);
        var quarters = _random.Next(shortest, longest);
        var at = blank.CaughtAt.AddSeconds(60 + _random.Next(7000));
        return blank with
        {
            Species = species,
            Length = ExactLength.From(quarters / 4m, LengthUnit.Inch),
            Weight = _random.Next(20) < 3 ? ExactMass.From(100 + (quarters * 15), MassUnit.Gram) : null,
            Lure = _random.Next(3) == 0 ? "gold 1/8 oz" : null,
            Line = 1 + _random.Next(2),
            Kept = _random.Next(3) == 0,
            Note = _random.Next(4) == 0 ? "came up at the second drop" : null,
            Photo = _random.Next(5) == 0 ? $"https://files.example.test/attachments/1{_random.NextInt64(1_000_000_000_000_000_000):D18}/fish.jpg#id=1{_random.NextInt64(1_000_000_000_000_000_000):D18}" : null,
            CaughtAt = at,
            LoggedAt = at,
        };
    }

    private T Any<T>(IReadOnlyList<T> all) => all[_random.Next(all.Count)];
}
