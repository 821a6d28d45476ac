namespace CrewBot.Worker.Configuration;

/// <summary>Where the system keeps what belongs to one user.</summary>
internal static class UserFolders
{
    /// <summary>The path of a file that outlives a run.</summary>
    /// <param name="environment">The environment variables.</param>
    /// <param name="name">The file's name.</param>
    /// <returns>Null when the user has no place for it.</returns>
    public static string? StateOf(IReadOnlyDictionary<string, string> environment, string name)
    {
        var folder = environment.GetValueOrDefault("XDG_STATE_HOME") is { Length: > 0 } state && Path.IsPathRooted(state)
            ? state
            : OfPlatform(environment);
        return folder is null ? null : Path.Combine(folder, "crewbot", name);
    }

    private static string? OfPlatform(IReadOnlyDictionary<string, string> environment)
    {
        if (OperatingSystem.IsWindows() || OperatingSystem.IsMacOS())
        {
            return Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) is { Length: > 0 } local ? local : null;
        }

        return environment.GetValueOrDefault("HOME") is { Length: > 0 } home ? Path.Combine(home, ".local", "state") : null;
    }
}
