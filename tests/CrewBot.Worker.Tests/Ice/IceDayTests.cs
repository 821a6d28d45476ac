using System.Globalization;
using System.Text;
using CrewBot.Chat;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Rooms.Rendering;
using Microsoft.Extensions.DependencyInjection;

namespace CrewBot.Worker.Tests.Ice;

/// <summary>An invented day of ice reports between three crews, as the terminal room prints it and the docs show it.</summary>
/// <remarks>Set <c>CREWBOT_WRITE_EXPECTED=1</c> for one run to write the page anew, and read the difference.</remarks>
public sealed class IceDayTests : IDisposable
{
    private const string Bot = "the bot";
    private const string First = "tamarack";
    private const string Beginning = """
        # Ice, from a hole drilled to a copy corrected

        Three invented crews on an invented lake, as the terminal room prints it: who says what in which crew's channel, with its answer,
        and what the bot tells the channels that follow the lake. `why` is the answer's working. No ice is safe ice, and nothing here is a
        clearance. A test runs every line and compares.


        """;

    // Times are UTC. A crew's channel is named for it.
    private static readonly (string Time, string Who, string Crew, string Said)[] Script =
    [
        ("2027-01-16 07:00", "Ana", First, "crew setup water:\"Loon Basin\""),
        ("2027-01-16 07:00", "Ana", First, "ice follow water:\"Loon Basin\""),
        ("2027-01-16 07:01", "Bo", "heron", "crew setup water:\"Loon Basin\""),
        ("2027-01-16 07:01", "Bo", "heron", "ice follow water:\"Loon Basin\""),
        ("2027-01-16 07:02", "Cy", "kettle", "crew setup water:\"Loon Basin\""),
        ("2027-01-16 07:02", "Cy", "kettle", "ice follow water:\"Loon Basin\""),
        ("2027-01-16 07:03", "Ana", First, "ice share crew:heron spot:shown"),
        ("2027-01-16 07:03", "Bo", "heron", "ice share crew:tamarack"),
        ("2027-01-16 07:04", "Ana", First, "ice share crew:kettle"),
        ("2027-01-16 07:04", "Cy", "kettle", "ice share crew:tamarack"),
        ("2027-01-16 08:00", "Ana", First, "ice Loon Basin north bay 12in clear"),
        ("2027-01-16 08:01", Bot, First, ""),
        ("2027-01-16 08:05", "Ana", First, "ice carry water:\"Loon Basin\" spot:\"north bay\" people:6 shelter:cabin stay:1h warmest:10F"),
        ("2027-01-16 08:05", "Ana", First, "why"),
        ("2027-01-16 08:06", "Ana", First, "ice carry water:\"Loon Basin\" spot:\"north bay\" people:6 shelter:cabin stay:4h warmest:10F"),
        ("2027-01-16 08:20", "Ana", First, "ice correct report:1 clear:9in reason:\"read the tape wrong\""),
        ("2027-01-16 08:21", Bot, First, ""),
        ("2027-01-16 08:22", "Ana", First, "ice carry water:\"Loon Basin\" spot:\"north bay\" people:6 shelter:cabin stay:1h warmest:10F"),
        ("2027-01-16 09:00", "Ana", First, "ice relay author:Dee post:\"4-5 inches of good ice off the landing, slush by the narrows\""),
        ("2027-01-16 09:30", "Ana", First, "ice report water:\"Loon Basin\" spot:\"the inlet\" hazard:\"broke through\""),
        ("2027-01-16 09:31", Bot, First, ""),
        ("2027-01-16 09:40", "Ana", First, "ice board water:\"Loon Basin\""),
    ];

    private readonly TemporaryFolder _folder = new();
    private readonly Desk _desk = new() { Width = 100 };
    private readonly ReplyRenderer _renderer;
    private readonly TerminalPosts _room;
    private Reply _last = new() { Headline = "" };
    private int _commands;

    public IceDayTests()
    {
        var surroundings = _desk.Surroundings();
        _renderer = new ReplyRenderer(ConsoleOutput.Open(surroundings));
        _room = new TerminalPosts(
            new PlainLines(surroundings), _renderer, surroundings, new Caller(First, "Ana", Role.Owner, CrewUnits.Customary));
    }

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    private string File => _folder.File("crew.db");

    [Fact]
    public async Task Day_AReportToldToThreeCrewsAndCorrected_ReadsAsTheDocsShowIt()
    {
        var page = new StringBuilder(Beginning.ReplaceLineEndings("\n")).Append("```\n");
        foreach (var (time, who, crew, said) in Script)
        {
            page.Append(CultureInfo.InvariantCulture, $"{time} {(who == Bot ? Bot : $"{who}, {crew}> {(said == "why" ? said : $"/{said}")}")}\n");
            foreach (var line in await PrintedAsync(time, who, crew, said))
            {
                page.Append(line.Length == 0 ? "\n" : $"    {line}\n");
            }

            page.Append('\n');
        }

        await AssertPageAsync(page.Append("```\n").ToString());
    }

    public void Dispose() => _folder.Dispose();

    private async Task<IEnumerable<string>> PrintedAsync(string time, string who, string crew, string said)
    {
        var before = _desk.Output.Length;
        if (who == Bot)
        {
            await PumpRun.UntilQuietAsync(File, First, _room, At(time));

            // Places are served beside each other, so their order is not the same every time.
            var posts = _desk.Output[before..].ReplaceLineEndings("\n").Split("\n\n", StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal);
            return string.Join("\n\n", posts.Select(post => post.TrimEnd())).Split('\n').Select(line => line.TrimEnd());
        }

        _last = said == "why" ? Explanation.Of(_last) : await SayAsync(time, who, crew, said);
        Assert.Null(_last.Problem);
        _renderer.Write(_last, withActions: false);

        return _desk.Output[before..].ReplaceLineEndings("\n").TrimEnd().Split('\n').Select(line => line.TrimEnd());
    }

    private async Task<Reply> SayAsync(string time, string who, string crew, string line)
    {
        await using var book = CrewBook.At(File);
        await using var services = new ServiceCollection().AddLogging().AddChat(TradeKnowledge.BuiltIn, book).BuildServiceProvider();
        var typed = CommandText.Read(line, services.GetRequiredService<CommandCatalog>()).Value!;
        return await services.GetRequiredService<Dispatcher>().AnswerAsync(
            new CommandCall($"r{++_commands}", At(time), new Caller(crew, who, Role.Owner, CrewUnits.Customary), typed.Path, typed.Options) { Place = $"{crew}-ice" }, Limit);
    }

    private static DateTimeOffset At(string time) => DateTimeOffset.ParseExact(time, "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    private static async Task AssertPageAsync(string told)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!System.IO.File.Exists(Path.Combine(folder!.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        var file = Path.Combine(folder.FullName, "docs", "ice-day.md");
        if (Environment.GetEnvironmentVariable("CREWBOT_WRITE_EXPECTED") == "1")
        {
            await System.IO.File.WriteAllTextAsync(file, told, Limit);
        }

        Assert.Equal(await System.IO.File.ReadAllTextAsync(file, Limit), told, ignoreLineEndingDifferences: true);
    }
}
