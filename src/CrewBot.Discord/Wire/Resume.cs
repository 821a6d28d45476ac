namespace CrewBot.Discord.Wire;

internal sealed record Resume
{
    public required string Token { get; init; }
    public required string SessionId { get; init; }
    public long? Seq { get; init; }

    public override string ToString() => "resume";
}
