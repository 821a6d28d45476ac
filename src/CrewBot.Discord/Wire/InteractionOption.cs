using System.Text.Json;

namespace CrewBot.Discord.Wire;

/// <summary>A subcommand with its options, or a leaf with the value that was given.</summary>
internal sealed record InteractionOption
{
    public string? Name { get; init; }
    public OptionType? Type { get; init; }
    public JsonElement? Value { get; init; }
    public IReadOnlyList<InteractionOption>? Options { get; init; }
    public bool? Focused { get; init; }
}
