using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Demos;

/// <summary>Fills a new database with the invented winter, through the commands that people use.</summary>
internal sealed class DemoOnce(CommandCatalog catalog, Dispatcher dispatcher, Caller caller, Surroundings surroundings)
{
    private const string Zone = "America/Chicago";

    /// <summary>Why it can't be done; null when it can. What people have logged is not mixed with what nobody caught.</summary>
    public static string? FindObstacle(Settings settings) => settings.Database switch
    {
        null => "There is no place for a database: set CrewBot:Database to the path of a file.",
        { } path when File.Exists(path) => $"{path} is there already, and the demo fills only a new database: set CREWBOT_DATABASE to another file.",
        _ => null,
    };

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(CancellationToken cancellationToken)
    {
        var acts = new DemoSeason().Tell(TimeZoneInfo.FindSystemTimeZoneById(Zone));
        acts = [.. Settings(acts[0].At.AddHours(-1)), .. acts];
        for (var number = 0; number < acts.Count; number++)
        {
            if ((await AskAsync(acts[number], number, cancellationToken)).Problem is { } problem)
            {
                surroundings.Error.WriteLine(SafeText.Of($"{acts[number].Command}: {problem}"));
                return ExitCode.Refused;
            }
        }

        surroundings.Output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
            An invented winter, {acts[0].At:yyyy-MM-dd} to {acts[^1].At:yyyy-MM-dd}: {acts.Count(act => act.Command.StartsWith("/catch", StringComparison.Ordinal))} fish of {acts.Select(act => act.Angler).Distinct().Count()} anglers.
            Planted: walleyes take the {DemoSeason.PlantedWay} twice as often as the other ways. Not planted: any effect of hour or depth.
            Ask it: say "/catch learn species:walleye span:all", the same with by:time or by:depth, say "/catch leaders span:all".
            """));
        return ExitCode.Answered;
    }

    private static IEnumerable<DemoAct> Settings(DateTimeOffset at) =>
    [
        new(at, DemoSeason.Anglers[0], $"/crew setup zone:{Zone}"),
        .. DemoSeason.Waters.Select(water => new DemoAct(at, DemoSeason.Anglers[0], $"/crew setup water:\"{water}\"")),
    ];

    private async Task<Reply> AskAsync(DemoAct act, int number, CancellationToken cancellationToken)
    {
        var typed = CommandText.Read(act.Command, catalog).Value!;
        var call = new CommandCall(
            string.Create(CultureInfo.InvariantCulture, $"demo-{number}"), act.At, caller with { Member = act.Angler, Name = act.Angler },
            typed.Path, typed.Options);
        return await dispatcher.AnswerAsync(call, cancellationToken);
    }
}
