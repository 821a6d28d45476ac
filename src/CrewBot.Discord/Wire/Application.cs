namespace CrewBot.Discord.Wire;

internal sealed record Application
{
    public Snowflake? Id { get; init; }
    public string? Name { get; init; }
}
