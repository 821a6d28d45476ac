namespace CrewBot.Worker.Rooms;

/// <summary>Files that may hold names and spots: made for the eyes of whoever asked, from their first byte on.</summary>
internal static class OwnersFile
{
    /// <summary>How such a file is opened to be written.</summary>
    public static FileStreamOptions Options(FileMode mode)
    {
        var options = new FileStreamOptions { Mode = mode, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return options;
    }
}
