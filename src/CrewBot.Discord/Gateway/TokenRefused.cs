namespace CrewBot.Discord.Gateway;

/// <summary>The one line about a token that the API does not take.</summary>
internal static class TokenRefused
{
    public static DiscordFatalException Exception(Exception? cause = null) => new(
        "The platform refused the bot token" + (cause is null ? "" : $" ({cause.Message})") +
        ". Copy a fresh token from the developer portal into the configuration and start again.");
}
