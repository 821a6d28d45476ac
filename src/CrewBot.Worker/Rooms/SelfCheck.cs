using CrewBot.Discord;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Rooms.Rendering;

namespace CrewBot.Worker.Rooms;

/// <summary>Looks at what CrewBot depends on and prints a line for each: ok, or what is wrong and what to do.</summary>
internal sealed class SelfCheck(Settings settings, Surroundings surroundings)
{
    /// <summary>Runs every check.</summary>
    /// <returns>The exit code: whether all is well.</returns>
    public async Task<int> RunAsync(CancellationToken cancellationToken)
    {
        // A configuration with a fault in it stops the start before this.
        Print(new Finding("configuration", true, "ok"));
        if (settings.Discord is not { } discord)
        {
            Print(new Finding(
                "bot token", true, "none is given, so only the terminal room opens; docs/discord-setup.md says how to get one"));
            return ExitCode.Answered;
        }

        var findings = await new ApiCheck(discord, TimeProvider.System).RunAsync(cancellationToken);
        foreach (var finding in findings)
        {
            Print(finding);
        }

        return findings.All(finding => finding.IsWell) ? ExitCode.Answered : ExitCode.Refused;
    }

    private void Print(Finding finding) =>
        surroundings.Output.WriteLine(SafeText.Of($"{finding.Subject}: {finding.Text}"));
}
