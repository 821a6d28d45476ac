namespace CrewBot.Discord.Wire;

internal sealed record MessageReference
{
    public required Snowflake MessageId { get; init; }
    public bool FailIfNotExists { get; init; }
}
