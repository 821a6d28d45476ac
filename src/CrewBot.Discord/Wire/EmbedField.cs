namespace CrewBot.Discord.Wire;

internal sealed record EmbedField
{
    public string? Name { get; init; }
    public string? Value { get; init; }
    public bool? Inline { get; init; }
}
