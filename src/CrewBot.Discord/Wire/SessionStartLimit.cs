namespace CrewBot.Discord.Wire;

internal sealed record SessionStartLimit
{
    public int? Total { get; init; }
    public int? Remaining { get; init; }

    /// <summary>Milliseconds until <see cref="Remaining"/> is full again.</summary>
    public long? ResetAfter { get; init; }

    public int? MaxConcurrency { get; init; }
}
