namespace CrewBot.Discord.Wire;

internal sealed record Choice
{
    public required string Name { get; init; }
    public IReadOnlyDictionary<string, string>? NameLocalizations { get; init; }
    public required string Value { get; init; }
}
