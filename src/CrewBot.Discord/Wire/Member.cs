namespace CrewBot.Discord.Wire;

internal sealed record Member
{
    public User? User { get; set; }
    public string? Nick { get; set; }
    public IReadOnlyList<Snowflake>? Roles { get; set; }

    /// <summary>The member's permission bits in this channel, overwrites included: a decimal string of a growing set.</summary>
    public string? Permissions { get; set; }
}
