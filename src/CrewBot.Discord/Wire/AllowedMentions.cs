namespace CrewBot.Discord.Wire;

/// <summary>
/// Whom a message may ping. Left out, the platform's own default pings people, on edits too: so every body states it.
/// </summary>
internal sealed record AllowedMentions
{
    public static readonly AllowedMentions Nobody = new();

    public IReadOnlyList<string> Parse { get; init; } = [];
    public IReadOnlyList<Snowflake>? Users { get; init; }
    public IReadOnlyList<Snowflake>? Roles { get; init; }
}
