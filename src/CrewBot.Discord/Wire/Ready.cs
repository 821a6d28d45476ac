namespace CrewBot.Discord.Wire;

/// <summary>The session's start. A compatible server may leave the resume address out.</summary>
internal sealed record Ready
{
    public string? SessionId { get; init; }
    public string? ResumeGatewayUrl { get; init; }
    public Application? Application { get; init; }
    public User? User { get; init; }
}
