namespace CrewBot.Discord.Wire;

internal sealed record Guild
{
    public Snowflake? Id { get; init; }
    public string? Name { get; init; }
}
