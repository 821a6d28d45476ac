namespace CrewBot.Discord.Wire;

internal sealed record Hello
{
    /// <summary>Milliseconds between heartbeats.</summary>
    public double? HeartbeatInterval { get; init; }
}
