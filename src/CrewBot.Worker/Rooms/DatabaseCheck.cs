using System.Globalization;
using CrewBot.Discord;
using CrewBot.Storage;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Outbox;

namespace CrewBot.Worker.Rooms;

/// <summary>Looks at the database and at what is still to be said, and says what to do about what is wrong.</summary>
/// <param name="path">The file; null where there is no place for one.</param>
/// <param name="clock">Now.</param>
internal sealed class DatabaseCheck(string? path, TimeProvider clock)
{
    private const long Megabyte = 1_000_000;

    // Room for a season's growth, the write-ahead file and a migration.
    private const long LeastFree = 100 * Megabyte;

    // The pump looks every quarter of a minute and pauses for five minutes at most.
    private static readonly TimeSpan LongestDelay = TimeSpan.FromMinutes(15);

    /// <summary>Runs the checks.</summary>
    public async Task<IReadOnlyList<Finding>> RunAsync(CancellationToken cancellationToken)
    {
        if (path is null)
        {
            return [new("database", false, "there is no place for one; set CrewBot:Database to the path of a file")];
        }

        var findings = new List<Finding>();
        if (Directory.Exists(path))
        {
            findings.Add(new("database", false, $"{path} is a folder; set CrewBot:Database to the path of a file"));
        }
        else if (!File.Exists(path))
        {
            findings.Add(FolderFault(FolderOf(path)) is { } fault
                ? new("database", false, $"{path} can't be made: {fault} Choose a place that this user may write to")
                : new("database", true, $"{path} is not there yet; it is made by the first command that needs it"));
        }
        else
        {
            await LookAsync(path, findings, cancellationToken);
        }

        AddDisk(path, findings);
        return findings;
    }

    private async Task LookAsync(string file, List<Finding> findings, CancellationToken cancellationToken)
    {
        try
        {
            var state = await DatabaseState.ReadAsync(file, cancellationToken);
            findings.Add(new("database", true, $"ok, {file}, {Size(file)}, can be written"));
            findings.Add(new("database shape", true, state.Shape == DatabaseState.NewestShape
                ? $"ok, {state.Shape}"
                : $"ok, {state.Shape}; the next start brings it to {DatabaseState.NewestShape}: make a backup before"));
            findings.Add(state switch
            {
                { Damage: { } damage } => new("database check", false, $"{damage}; end the program, put the file aside and bring back a backup with: restore FILE"),
                { IsChecked: false } => new("database check", true, "ok as far as it went in 5 s; backup FILE checks a copy to its end"),
                _ => new("database check", true, "ok"),
            });
            AddPosts(state.Posts, findings);
        }
        catch (StorageException refused)
        {
            findings.Add(new("database", false, refused.Message));
        }
    }

    private void AddPosts(PostState? posts, List<Finding> findings)
    {
        if (posts is null)
        {
            return;
        }

        var late = posts.OldestDueAt is { } due && clock.GetUtcNow() - due is var since && since > LongestDelay ? since : (TimeSpan?)null;
        var waiting = posts.Pending == 0 ? "ok, none waits" : string.Create(
            CultureInfo.InvariantCulture, $"{posts.Pending} wait, {posts.Corrections} of them to correct what stands in a chat");
        findings.Add(late is { } waited
            ? new("posts", false, $"{waiting}; the oldest has waited for {Words(waited)}: start CrewBot, and look whether it is in that chat and may write there")
            : new("posts", true, posts.Pending == 0 ? waiting : $"ok, {waiting}"));
        findings.Add(new("posts given up", posts.Dead == 0, posts.Dead == 0
            ? "ok, none"
            : string.Create(CultureInfo.InvariantCulture, $"{posts.Dead}; mend the cause, and what is said again under the same key is tried again")));
        findings.AddRange(posts.Newest.Select(dead => new Finding(
            "posts given up",
            false,
            string.Create(CultureInfo.InvariantCulture, $"{dead.Key} of crew {dead.Crew} to {dead.Place}, {dead.Attempts} attempts: {dead.Fault}"))));
    }

    private static void AddDisk(string path, List<Finding> findings)
    {
        var free = new DriveInfo(FolderOf(path)).AvailableFreeSpace;
        findings.Add(free < LeastFree
            ? new("disk", false, $"{free / Megabyte} MB are free where the database lies; make room before it is full")
            : new("disk", true, $"ok, {free / Megabyte} MB are free where the database lies"));
    }

    // Where the file lies, or the nearest folder above that is there.
    private static string FolderOf(string path)
    {
        var folder = Path.GetDirectoryName(path)!;
        while (!Directory.Exists(folder) && Path.GetDirectoryName(folder) is { } above)
        {
            folder = above;
        }

        return folder;
    }

    // Making a file, gone again at once, is the one sure test.
    private static string? FolderFault(string folder)
    {
        try
        {
            using var _ = new FileStream(
                Path.Combine(folder, Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }

    private static string Size(string file) => string.Create(CultureInfo.InvariantCulture, $"{new FileInfo(file).Length / (double)Megabyte:0.#} MB");

    private static string Words(TimeSpan time) => FormattableString.Invariant(time switch
    {
        { TotalHours: >= 48 } => $"{time.TotalDays:0} days",
        { TotalMinutes: >= 120 } => $"{time.TotalHours:0} h",
        _ => (FormattableString)$"{time.TotalMinutes:0} min",
    });
}
