namespace CrewBot.Discord.Wire;

/// <summary>A message as read back. What the bot writes is a <see cref="MessageBody"/>.</summary>
internal sealed record Message
{
    public Snowflake? Id { get; init; }
    public Snowflake? ChannelId { get; init; }
    /// <summary>The guild it was written in; null in a direct message.</summary>
    public Snowflake? GuildId { get; init; }

    public User? Author { get; init; }
    public string? Content { get; init; }
    public DateTimeOffset? Timestamp { get; init; }
    public MessageFlags? Flags { get; init; }
    public List<Embed>? Embeds { get; init; }
    public IReadOnlyList<Attachment>? Attachments { get; init; }
}
