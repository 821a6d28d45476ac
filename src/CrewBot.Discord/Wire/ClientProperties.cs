namespace CrewBot.Discord.Wire;

internal sealed record ClientProperties(string Os, string Browser, string Device);
