namespace CrewBot.Discord.Wire;

/// <summary>The things that ids in an interaction's data stand for.</summary>
internal sealed record ResolvedData
{
    public IReadOnlyDictionary<Snowflake, User>? Users { get; init; }
    public IReadOnlyDictionary<Snowflake, Member>? Members { get; init; }
    public IReadOnlyDictionary<Snowflake, Role>? Roles { get; init; }
    public IReadOnlyDictionary<Snowflake, Channel>? Channels { get; init; }
    public IReadOnlyDictionary<Snowflake, Message>? Messages { get; init; }
    public IReadOnlyDictionary<Snowflake, Attachment>? Attachments { get; init; }
}
