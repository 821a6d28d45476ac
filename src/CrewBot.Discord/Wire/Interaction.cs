namespace CrewBot.Discord.Wire;

/// <summary>What a person did: a command, a press, a choice, a form. Read from <c>INTERACTION_CREATE</c>.</summary>
internal sealed record Interaction
{
    public required Snowflake Id { get; init; }
    public Snowflake? ApplicationId { get; init; }
    public required InteractionType Type { get; init; }

    /// <summary>Grants fifteen minutes of answering in the bot's name: secret, never logged.</summary>
    public required string Token { get; init; }

    public InteractionData? Data { get; init; }
    public Snowflake? GuildId { get; init; }
    public Snowflake? ChannelId { get; init; }
    public Channel? Channel { get; init; }
    public Member? Member { get; init; }
    public User? User { get; init; }
    public Message? Message { get; init; }
    public string? Locale { get; init; }
    public string? GuildLocale { get; init; }
    public string? AppPermissions { get; init; }
    public InteractionContext? Context { get; init; }
    public long? AttachmentSizeLimit { get; init; }

    /// <summary>The one who acted: inside the member in a guild, on its own in a direct message.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public User? Actor => Member?.User ?? User;

    public override string ToString() => $"interaction {Id} ({Type})";
}
