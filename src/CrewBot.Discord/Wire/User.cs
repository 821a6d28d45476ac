namespace CrewBot.Discord.Wire;

internal sealed record User
{
    public Snowflake? Id { get; init; }
    public string? Username { get; init; }
    public string? GlobalName { get; init; }
    public bool? Bot { get; init; }
}
