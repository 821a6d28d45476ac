namespace CrewBot.Discord.Wire;

internal sealed record EmbedFooter
{
    public string? Text { get; init; }
}
