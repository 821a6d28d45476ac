namespace CrewBot.Discord.Wire;

/// <summary>Whom to open a direct message with.</summary>
internal sealed record DirectChannelBody(Snowflake RecipientId);
