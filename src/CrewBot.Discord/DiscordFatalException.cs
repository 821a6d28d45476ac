namespace CrewBot.Discord;

/// <summary>The room cannot work until a person changes something; the message says what.</summary>
public sealed class DiscordFatalException(string message) : Exception(message);
