namespace CrewBot.Discord.Wire;

internal sealed record Member
{
    public User? User { get; init; }
    public string? Nick { get; init; }
    public IReadOnlyList<Snowflake>? Roles { get; init; }

    /// <summary>The member's permission bits in this channel, overwrites included: a decimal string of a growing set.</summary>
    public string? Permissions { get; init; }
}
