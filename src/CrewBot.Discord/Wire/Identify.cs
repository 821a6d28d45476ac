namespace CrewBot.Discord.Wire;

internal sealed record Identify
{
    public required string Token { get; init; }

    /// <summary>
    /// What is listened to besides interactions, which come without being asked for: messages written to the bot itself.
    /// That is no privileged intent, and such messages come with their content.
    /// </summary>
    public int Intents { get; init; } = 1 << 12;

    public required IReadOnlyList<int> Shard { get; init; }
    public required ClientProperties Properties { get; init; }

    public override string ToString() => "identify";
}
