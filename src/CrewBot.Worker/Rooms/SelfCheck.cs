using CrewBot.Discord;
using CrewBot.Worker.Configuration;
using CrewBot.Worker.Photos;
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
        var findings = new List<Finding> { new("configuration", true, "ok") };
        findings.AddRange(await new DatabaseCheck(settings.Database, TimeProvider.System).RunAsync(cancellationToken));
        if (settings.PhotoFolder is { } photos)
        {
            findings.Add(PhotosIn(photos));
        }

        findings.ForEach(Print);
        var room = await RoomAsync(cancellationToken);
        return findings.All(finding => finding.IsWell) && room.All(finding => finding.IsWell) ? ExitCode.Answered : ExitCode.Refused;
    }

    private Finding PhotosIn(string folder)
    {
        if (File.Exists(folder))
        {
            return new("photos", false, $"{folder} is a file; set CrewBot:PhotoFolder to the path of a folder");
        }

        try
        {
            var used = PhotoFolder.Used(folder) / PhotoFolder.Megabyte;
            return used < settings.PhotoMegabytes
                ? new("photos", true, $"ok, copies in {folder} take {used} MB of {settings.PhotoMegabytes}")
                : new("photos", false, $"copies in {folder} take all of their {settings.PhotoMegabytes} MB: raise CrewBot:PhotoMegabytes, or move old ones away");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new("photos", false, $"copies in {folder} can't be counted: {fault.Message}");
        }
    }

    // Its lines come one after the other from the network, after what is known at once.
    private async Task<IReadOnlyList<Finding>> RoomAsync(CancellationToken cancellationToken)
    {
        IReadOnlyList<Finding> findings = settings.Discord is { } discord
            ? await new ApiCheck(discord, TimeProvider.System).RunAsync(cancellationToken)
            : [new("bot token", true, "none is given, so only the terminal room opens; docs/discord-setup.md says how to get one")];
        foreach (var finding in findings)
        {
            Print(finding);
        }

        return findings;
    }

    private void Print(Finding finding) =>
        surroundings.Output.WriteLine(SafeText.Of($"{finding.Subject}: {finding.Text}"));
}
