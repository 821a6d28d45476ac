namespace CrewBot.Discord.Wire;

/// <summary>Where an interaction was made or a command may be used.</summary>
internal enum InteractionContext
{
    Guild = 0,
    BotDirectMessage = 1,
    PrivateChannel = 2,
}
