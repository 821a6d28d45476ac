namespace CrewBot.Discord.Wire;

/// <summary>
/// A row, button, select, text input or label as the bot writes it: each kind fills its own fields, the rest stays out.
/// </summary>
internal sealed record Component
{
    public required ComponentType Type { get; init; }
    public List<Component>? Components { get; init; }
    public string? CustomId { get; init; }
    public string? Label { get; init; }
    public string? Description { get; init; }

    /// <summary>A <see cref="ButtonStyle"/>, or for a text input 1 (one line) or 2 (a paragraph).</summary>
    public int? Style { get; init; }

    public string? Url { get; init; }
    public IReadOnlyList<SelectOption>? Options { get; init; }
    public string? Placeholder { get; init; }
    public int? MinLength { get; init; }
    public int? MaxLength { get; init; }
    public string? Value { get; init; }
    public bool? Required { get; init; }

    /// <summary>The one field inside a label.</summary>
    [System.Text.Json.Serialization.JsonPropertyName("component")]
    public Component? Field { get; init; }
}
