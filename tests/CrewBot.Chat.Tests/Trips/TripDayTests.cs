using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>An invented trip from its planning to a party that comes back late, as the docs show it.</summary>
public sealed class TripDayTests : IAsyncDisposable
{
    private const string Page = "docs/trip-day.md";

    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Winnipeg");

    // Fourteen people with six shelters, two children, one smoker; Gus drops out the evening before, Hal comes back late.
    private static readonly (string Time, string Who, string Said)[] Script =
    [
        ("2027-01-13 19:00", "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\""),
        ("2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00 place:\"the north landing\" species:walleye"),
        ("2027-01-13 19:10", "Bo", "trip join answer:in party:3 children:2"),
        ("2027-01-13 19:12", "Cy", "trip join answer:in smoke:smoker"),
        ("2027-01-13 19:14", "Dee", "trip join answer:in party:2 smoke:smoke-free"),
        ("2027-01-13 19:15", "Eli", "trip join answer:in with:Dee"),
        ("2027-01-13 19:20", "Fay", "trip join answer:in party:2 apart:Cy"),
        ("2027-01-13 19:25", "Gus", "trip join answer:in"),
        ("2027-01-13 19:30", "Hal", "trip join answer:in party:3"),
        ("2027-01-14 18:00", "Ana", "trip bring item:\"large hub\""),
        ("2027-01-14 18:01", "Bo", "trip bring item:hub"),
        ("2027-01-14 18:02", "Cy", "trip bring item:\"two-person flip-over\""),
        ("2027-01-14 18:03", "Dee", "trip bring item:\"small hub\""),
        ("2027-01-14 18:04", "Gus", "trip bring item:\"one-person flip-over\""),
        ("2027-01-14 18:05", "Hal", "trip bring item:\"red barn\" as:shelter seats:5 weight:60kg"),
        ("2027-01-14 18:06", "Hal", "trip bring item:\"small heater\""),
        ("2027-01-14 18:10", "Ana", "trip need"),
        ("2027-01-14 18:12", "Eli", "trip need mine:\"CO alarm\""),
        ("2027-01-14 18:13", "Fay", "trip need mine:\"CO alarm\""),
        ("2027-01-14 18:14", "Ana", "trip need waive:picks"),
        ("2027-01-14 18:20", "Ana", "trip seats"),
        ("2027-01-15 20:30", "Gus", "trip join answer:out"),
        ("2027-01-15 20:31", "Ana", "trip seats"),
        ("2027-01-15 20:32", "Ana", "trip load"),
        ("2027-01-16 07:30", "Ana", "trip out"),
        ("2027-01-16 07:35", "Hal", "trip out back:15:00"),
        ("2027-01-16 07:50", "Hal", "lines down lines:2"),
        ("2027-01-16 15:10", "Ana", "trip back"),
        ("2027-01-16 15:40", "Ana", "trip show"),
        ("2027-01-16 15:45", "Hal", "trip late by:+30min"),
        ("2027-01-16 16:05", "Hal", "trip back"),
    ];

    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Day_FromPlanningToTheLateParty_ReadsAsTheDocsShowIt()
    {
        var page = new StringBuilder("# A trip, from planning to the last party back\n\nAn invented crew on an invented lake, told in the terminal room. A test answers every line and compares.\n\n```\n");
        foreach (var (time, who, said) in Script)
        {
            var local = DateTime.ParseExact(time, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            _room.Now = new DateTimeOffset(local, Zone.GetUtcOffset(local)).ToUniversalTime();
            Write(page, time, who, said, await _room.SayAsync(said, who, who == "Ana" ? Role.Owner : Role.Member));
        }

        await StoredText.AssertAsync(Page, page.Append("```\n").ToString());
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private static void Write(StringBuilder page, string time, string who, string said, Reply reply)
    {
        page.Append(CultureInfo.InvariantCulture, $"{time} {who}> /{said}\n");
        foreach (var line in reply.Problem is { } problem ? [problem] : reply.Lines.Prepend(reply.Headline).Concat(reply.Cautions.Select(caution => $"! {caution}")))
        {
            page.Append(CultureInfo.InvariantCulture, $"    {line}\n");
        }

        page.Append('\n');
    }
}
