namespace CrewBot.Discord.Wire;

internal sealed record Channel
{
    public Snowflake? Id { get; init; }
    public int? Type { get; init; }
    public string? Name { get; init; }
    public Snowflake? GuildId { get; init; }
    public Snowflake? ParentId { get; init; }
}
