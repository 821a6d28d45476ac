namespace CrewBot.Discord.Wire;

/// <summary>A card.</summary>
internal sealed record Embed
{
    public string? Title { get; init; }
    public string? Description { get; init; }
    public int? Color { get; init; }
    public IReadOnlyList<EmbedField>? Fields { get; init; }
    public EmbedFooter? Footer { get; init; }
    public EmbedImage? Image { get; init; }
}
