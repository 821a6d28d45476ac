namespace CrewBot.Discord.Wire;

/// <summary>A thread to open, under a message or on its own.</summary>
internal sealed record ThreadBody
{
    /// <summary>A public thread. The platform's own default, where no message is given, is a private one.</summary>
    public const int PublicThread = 11;

    public required string Name { get; init; }
    public int? AutoArchiveDuration { get; init; }
    public int? Type { get; init; }
}
