using CrewBot.Worker.Configuration;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>Keeps the history between runs, where the system keeps such things; does without when it can't.</summary>
/// <param name="path">The file.</param>
internal sealed class HistoryFile(string path)
{
    /// <summary>The file of this user.</summary>
    /// <param name="environment">The environment variables.</param>
    /// <returns>Null when the user has no place for it.</returns>
    public static HistoryFile? Of(IReadOnlyDictionary<string, string> environment) =>
        UserFolders.StateOf(environment, "history") is { } file ? new HistoryFile(file) : null;

    public IReadOnlyList<string> Read()
    {
        try
        {
            return File.ReadAllLines(path);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Writes all lines at once, so that a run cut short leaves the old file or the new one.</summary>
    public void Write(IReadOnlyList<string> lines)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var beside = $"{path}.{Environment.ProcessId}";
            using (var file = new StreamWriter(beside, OwnersFile.Options(FileMode.Create)))
            {
                foreach (var line in lines)
                {
                    file.WriteLine(line);
                }
            }

            File.Move(beside, path, overwrite: true);
        }
        catch (Exception unwritable) when (unwritable is IOException or UnauthorizedAccessException)
        {
            // A read-only home is no reason to trouble anyone: the history lasts as long as the room.
        }
    }
}
