namespace CrewBot.Storage.Connections;

/// <summary>The file on the disk: only its owner may read what a crew confides.</summary>
internal static class DatabaseFile
{
    /// <summary>Makes the file and its folder when they are not there.</summary>
    /// <exception cref="StorageException">They can't be made or written.</exception>
    public static void Ensure(string path)
    {
        try
        {
            var folder = Path.GetDirectoryName(path)!;
            if (!Directory.Exists(folder))
            {
                CreateFolder(folder);
            }

            var options = new FileStreamOptions { Mode = FileMode.OpenOrCreate, Access = FileAccess.ReadWrite, Share = FileShare.ReadWrite };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using var _ = new FileStream(path, options);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StorageException(
                $"{path} can't be written: choose a place that this user may write to, or give this user access to it.", fault);
        }
    }

    private static void CreateFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
