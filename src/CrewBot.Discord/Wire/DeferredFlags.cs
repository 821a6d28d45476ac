namespace CrewBot.Discord.Wire;

internal sealed record DeferredFlags(MessageFlags Flags);
