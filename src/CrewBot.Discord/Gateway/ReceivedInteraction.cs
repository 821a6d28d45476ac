using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Gateway;

/// <summary>An interaction with the moment it came in, by the monotonic clock: its deadlines count from there.</summary>
internal sealed record ReceivedInteraction(Interaction Interaction, Snowflake? ApplicationId, long ReceivedAt)
{
    /// <summary>It was sent while the connection was gone: whoever sent it may have been told by now that nobody answered.</summary>
    public bool WasMissed { get; init; }
}
