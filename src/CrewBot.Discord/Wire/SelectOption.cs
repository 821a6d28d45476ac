namespace CrewBot.Discord.Wire;

internal sealed record SelectOption
{
    public required string Label { get; init; }
    public required string Value { get; init; }
    public string? Description { get; init; }
    public bool? Default { get; init; }
}
