using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Worker.Rooms;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Tests.Derbies;

/// <summary>The page that tells a derby day, run line by line through <c>say</c>.</summary>
/// <remarks>Set <c>CREWBOT_WRITE_EXPECTED=1</c> for one run to write what is printed into the page, and read the difference.</remarks>
public sealed partial class DerbyDayTests : IDisposable
{
    private const string Results = "derby-1.csv";

    private const string Crew = "tamarack";

    private readonly TemporaryFolder _folder = new();

    private string DatabaseFile => _folder.File("derby.db");

    [Fact]
    public async Task Page_EveryLine_PrintsWhatItShows()
    {
        File.Delete(Results);
        var file = PageFile();
        var page = await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken);
        var told = await TellAsync(page);
        if (Environment.GetEnvironmentVariable("CREWBOT_WRITE_EXPECTED") == "1")
        {
            await File.WriteAllLinesAsync(file, told, TestContext.Current.CancellationToken);
        }

        Assert.Equal(await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken), told);
        Assert.True(told.Count(line => SpokenLine().IsMatch(line)) > 40);
    }

    public void Dispose()
    {
        File.Delete(Results);
        _folder.Dispose();
    }

    // Keeps prose and commands; what stands between two commands is printed anew.
    private async Task<List<string>> TellAsync(string[] page)
    {
        var told = new List<string>();
        var (inScript, day) = (false, "2027-01-15");
        foreach (var line in page)
        {
            if (line == "```")
            {
                inScript = !inScript;
                told.Add(line);
            }
            else if (SpokenLine().Match(line) is { Success: true } spoken && inScript)
            {
                told.Add(line);
                told.AddRange(await SayAsync(spoken, day));
            }
            else if (BotLine().Match(line) is { Success: true } bot && inScript)
            {
                told.Add(line);
                told.AddRange(await PostsAsync(At(day, bot)));
            }
            else if (!inScript)
            {
                told.Add(line);
                day = line == "## On the ice" ? "2027-01-16" : day;
            }
        }

        return told;
    }

    private async Task<IEnumerable<string>> SayAsync(Match spoken, string day)
    {
        var desk = new Desk { Environment = new() { ["CREWBOT_DATABASE"] = DatabaseFile }, Width = 100 };
        await desk.StartAsync(
            "say", "--crew", Crew, "--as", spoken.Groups["name"].Value, "--role", spoken.Groups["name"].Value == "Ida" ? "owner" : "member",
            "--at", At(day, spoken), spoken.Groups["line"].Value);

        // A file is written into the folder one stands in, which is another on every machine.
        return $"{desk.Output}{desk.Error}".Replace($"{Environment.CurrentDirectory}{Path.DirectorySeparatorChar}", "", StringComparison.Ordinal).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => $"  {line.TrimEnd()}");
    }

    // What the bot says unasked, stopped again before the next line.
    private async Task<IEnumerable<string>> PostsAsync(string at)
    {
        var desk = new Desk { Width = 100 };
        var surroundings = desk.Surroundings();
        var room = new TerminalPosts(
            new PlainLines(surroundings), new ReplyRenderer(ConsoleOutput.Open(surroundings)), surroundings, new Caller(Crew, "Ida", Role.Owner, CrewUnits.Customary));
        await PumpRun.UntilQuietAsync(DatabaseFile, Crew, room, DateTimeOffset.Parse(at, CultureInfo.InvariantCulture));
        var lines = desk.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => $"  {line.TrimEnd()}".TrimEnd()).Where(line => line.Length > 0).ToList();
        return lines.Count == 0 ? ["  (nothing)"] : lines;
    }

    private static string At(string day, Match line) => $"{day}T{line.Groups["time"].Value}:00-06:00";

    private static string PageFile()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(folder.FullName, "docs", "derby-day.md");
    }

    [GeneratedRegex("^(?<time>[0-9]{2}:[0-9]{2}) the bot$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex BotLine();

    [GeneratedRegex("^(?<time>[0-9]{2}:[0-9]{2}) (?<name>[A-Z][a-z]+)> (?<line>.+)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex SpokenLine();
}
