namespace CrewBot.Discord.Wire;

internal sealed record Channel
{
    public Snowflake? Id { get; set; }
    public int? Type { get; set; }
    public string? Name { get; set; }
    public Snowflake? GuildId { get; set; }
    public Snowflake? ParentId { get; set; }
}
