namespace CrewBot.Discord.Wire;

internal sealed record User
{
    public Snowflake? Id { get; set; }
    public string? Username { get; set; }
    public string? GlobalName { get; set; }
    public bool? Bot { get; set; }
}
