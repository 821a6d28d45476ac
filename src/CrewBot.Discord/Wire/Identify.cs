namespace CrewBot.Discord.Wire;

internal sealed record Identify
{
    public required string Token { get; init; }

    /// <summary>Zero: interactions come without any intent, and nothing else is listened to.</summary>
    public int Intents { get; init; }

    public required IReadOnlyList<int> Shard { get; init; }
    public required ClientProperties Properties { get; init; }

    public override string ToString() => "identify";
}
