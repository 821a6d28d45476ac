namespace CrewBot.Discord.Wire;

/// <summary>Answer of <c>GET /gateway/bot</c>: where to connect, in how many shards, and how many starts are left.</summary>
internal sealed record GatewayAdvice
{
    public string? Url { get; init; }
    public int? Shards { get; init; }
    public SessionStartLimit? SessionStartLimit { get; init; }
}
