namespace CrewBot.Discord.Wire;

internal sealed record Role
{
    public Snowflake? Id { get; init; }
    public string? Name { get; init; }
}
