using System.Text.Json;

namespace CrewBot.Discord.Wire;

/// <summary>A subcommand with its options, or a leaf with the value that was given.</summary>
internal sealed record InteractionOption
{
    public string? Name { get; set; }
    public OptionType? Type { get; set; }
    public JsonElement? Value { get; set; }
    public IReadOnlyList<InteractionOption>? Options { get; set; }
    public bool? Focused { get; set; }
}
