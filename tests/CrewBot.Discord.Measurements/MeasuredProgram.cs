namespace CrewBot.Discord.Measurements;

/// <summary>A bot that is measured, as a process of its own.</summary>
/// <param name="Name">What its lines begin with.</param>
/// <param name="File">What is run.</param>
/// <param name="Arguments">What it is run with.</param>
internal sealed record MeasuredProgram(string Name, string File, params string[] Arguments)
{
    private static readonly string Interop = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "../../../../interop"));

    public static MeasuredProgram CrewBot { get; } = Published("crewbot", "worker/CrewBot.Worker");

    /// <summary>CrewBot's own client that answers a fixed card.</summary>
    public static MeasuredProgram Echo { get; } = Published("echo", "echo/CrewBot.Discord.Echo");

    /// <summary>A bot by a standard client, in another language, that answers a fixed card: it tells how quick the machine is at the time.</summary>
    public static MeasuredProgram Library { get; } = new("library", "node", Path.Combine(Interop, "static-card.js"));

    /// <summary>Whether the packages that the standard client is made of are installed.</summary>
    public static bool HasLibrary => Directory.Exists(Path.Combine(Interop, "node_modules"));

    private static MeasuredProgram Published(string name, string file) => new(name, Path.Combine(AppContext.BaseDirectory, file));
}
