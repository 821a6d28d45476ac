namespace CrewBot.Discord.Wire;

internal sealed record CommandOptionDefinition
{
    public required OptionType Type { get; init; }
    public required string Name { get; init; }
    public string? Description { get; init; }
    public IReadOnlyDictionary<string, string>? DescriptionLocalizations { get; init; }
    public bool? Required { get; init; }
    public IReadOnlyList<Choice>? Choices { get; init; }
    public bool? Autocomplete { get; init; }
    public IReadOnlyList<CommandOptionDefinition>? Options { get; init; }
    public int? MinLength { get; init; }
    public int? MaxLength { get; init; }
    public double? MinValue { get; init; }
    public double? MaxValue { get; init; }
}
