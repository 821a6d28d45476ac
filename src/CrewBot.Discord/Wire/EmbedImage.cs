namespace CrewBot.Discord.Wire;

internal sealed record EmbedImage
{
    public string? Url { get; init; }
}
