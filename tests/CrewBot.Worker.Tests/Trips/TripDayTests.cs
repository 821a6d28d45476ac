using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Trips;

/// <summary>An invented trip from its planning to a party that comes back late, as the terminal room prints it and the docs show it.</summary>
/// <remarks>Set <c>CREWBOT_WRITE_EXPECTED=1</c> for one run to write the page anew, and read the difference.</remarks>
public sealed class TripDayTests : IDisposable
{
    private const string Bot = "the bot";
    private const string Beginning = """
        # A trip, from planning to the last party back

        An invented crew on an invented lake, as the terminal room prints it: what people say with its answer, and what the bot says
        unasked at the times that stand there. Every person who comes gets a pocket card; Bo's is shown. A test runs every line, with the
        bot stopped and started between any two of them, and compares.


        """;

    // Fourteen people with six shelters, two children, one smoker; Gus drops out the evening before, Hal comes back late.
    private static readonly (string Time, string Who, string Said)[] Script =
    [
        ("2027-01-13 19:00", "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\" at:\"49.9, -97.1\" for:contact channel:shore"),
        ("2027-01-13 19:01", "Ana", "crew setup contact-role:watch emergency:112"),
        ("2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00 place:\"the north landing\" species:walleye depth:24ft"),
        ("2027-01-13 19:06", Bot, ""),
        ("2027-01-13 19:10", "Bo", "trip join answer:in party:3 children:2"),
        ("2027-01-13 19:12", "Cy", "trip join answer:in smoke:smoker"),
        ("2027-01-13 19:14", "Dee", "trip join answer:in party:2 smoke:smoke-free"),
        ("2027-01-13 19:15", "Eli", "trip join answer:in with:Dee"),
        ("2027-01-13 19:20", "Fay", "trip join answer:in party:2 apart:Cy"),
        ("2027-01-13 19:25", "Gus", "trip join answer:in"),
        ("2027-01-13 19:30", "Hal", "trip join answer:in party:3"),
        ("2027-01-13 19:31", Bot, ""),
        ("2027-01-14 18:00", "Ana", "trip bring item:\"large hub\""),
        ("2027-01-14 18:01", "Bo", "trip bring item:hub"),
        ("2027-01-14 18:02", "Cy", "trip bring item:\"two-person flip-over\""),
        ("2027-01-14 18:03", "Dee", "trip bring item:\"small hub\""),
        ("2027-01-14 18:04", "Gus", "trip bring item:\"one-person flip-over\""),
        ("2027-01-14 18:05", "Hal", "trip bring item:\"red barn\" as:shelter seats:5 weight:60kg"),
        ("2027-01-14 18:06", "Hal", "trip bring item:\"small heater\""),
        ("2027-01-14 18:07", "Bo", "trip bring item:\"throw rope\" count:2"),
        ("2027-01-14 18:10", "Ana", "trip need"),
        ("2027-01-14 18:12", "Eli", "trip need mine:\"CO alarm\""),
        ("2027-01-14 18:13", "Fay", "trip need mine:\"CO alarm\""),
        ("2027-01-14 18:14", "Ana", "trip need waive:picks"),
        ("2027-01-14 18:20", "Ana", "trip seats"),
        ("2027-01-15 17:00", "Ana", "trip day forecast:\"07:00 -4F 10mph, 13:00 10F 15mph\""),
        ("2027-01-15 18:00", Bot, ""),
        ("2027-01-15 20:30", "Gus", "trip join answer:out"),
        ("2027-01-15 20:31", "Ana", "trip seats"),
        ("2027-01-15 20:32", "Ana", "trip load"),
        ("2027-01-15 20:33", "Ana", "trip calendar"),
        ("2027-01-15 20:34", Bot, ""),
        ("2027-01-16 05:00", Bot, ""),
        ("2027-01-16 07:30", "Ana", "trip out"),
        ("2027-01-16 07:35", "Hal", "trip out back:15:00 spot:\"the north hump\""),
        ("2027-01-16 07:50", "Hal", "lines down lines:2"),
        ("2027-01-16 15:10", "Ana", "trip back"),
        ("2027-01-16 15:30", Bot, ""),
        ("2027-01-16 15:40", "Ana", "trip show"),
        ("2027-01-16 16:00", Bot, ""),
        ("2027-01-16 16:05", "Hal", "trip late by:+30min"),
        ("2027-01-16 16:06", Bot, ""),
        ("2027-01-16 16:30", "Hal", "trip back"),
        ("2027-01-16 16:31", Bot, ""),
        ("2027-01-16 23:00", Bot, ""),
    ];

    private readonly Desk _desk = new() { Width = 100 };
    private readonly ReplyRenderer _renderer;
    private readonly TripStation _station;

    public TripDayTests()
    {
        var surroundings = _desk.Surroundings();
        _renderer = new ReplyRenderer(ConsoleOutput.Open(surroundings));
        _station = new TripStation(new TerminalPosts(
            new PlainLines(surroundings), _renderer, surroundings, new Caller(TripStation.Crew, "Ana", Role.Owner, CrewUnits.Customary)));
    }

    [Fact]
    public async Task Day_FromPlanningToTheLateParty_ReadsAsTheDocsShowIt()
    {
        var page = new StringBuilder(Beginning.ReplaceLineEndings("\n")).Append("```\n");
        foreach (var (time, who, said) in Script)
        {
            page.Append(CultureInfo.InvariantCulture, $"{time} {(who == Bot ? Bot : $"{who}> /{said}")}\n");
            foreach (var line in await PrintedAsync(time, who, said))
            {
                page.Append(line.Length == 0 ? "\n" : $"    {line}\n");
            }

            page.Append('\n');
        }

        await AssertPageAsync(page.Append("```\n").ToString());
    }

    public void Dispose() => _station.Dispose();

    private async Task<IEnumerable<string>> PrintedAsync(string time, string who, string said)
    {
        var before = _desk.Output.Length;
        if (who == Bot)
        {
            await _station.RunAsync(time);

            // Places are served beside each other, so their order is not the same every time.
            var posts = _desk.Output[before..].ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries)
                .Where(post => !post.StartsWith("[@", StringComparison.Ordinal) || post.StartsWith("[@Bo]", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .ToList();
            return posts.Count == 0 ? ["(nothing)"] : string.Join("\n\n", posts.Select(post => post.TrimEnd())).Split('\n').Select(line => line.TrimEnd());
        }

        var reply = await _station.SayAsync(time, who, said);
        if (reply.Problem is { } problem)
        {
            _renderer.Refuse(Reply.Refuse(problem));
        }
        else
        {
            _renderer.Write(reply, withActions: false);
        }

        return _desk.Output[before..].ReplaceLineEndings("\n").TrimEnd().Split('\n').Select(line => line.TrimEnd());
    }

    private static async Task AssertPageAsync(string told)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        var file = Path.Combine(folder.FullName, "docs", "trip-day.md");
        if (Environment.GetEnvironmentVariable("CREWBOT_WRITE_EXPECTED") == "1")
        {
            await File.WriteAllTextAsync(file, told, TestContext.Current.CancellationToken);
        }

        Assert.Equal(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), told, ignoreLineEndingDifferences: true);
    }
}
