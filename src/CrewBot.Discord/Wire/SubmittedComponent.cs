using System.Text.Json;

namespace CrewBot.Discord.Wire;

/// <summary>
/// One field of a submitted modal: a label around its component, an old-style row around several, or the component itself.
/// </summary>
internal sealed record SubmittedComponent
{
    public ComponentType? Type { get; init; }
    public string? CustomId { get; init; }
    public JsonElement? Value { get; init; }
    public IReadOnlyList<string>? Values { get; init; }
    public SubmittedComponent? Component { get; init; }
    public IReadOnlyList<SubmittedComponent>? Components { get; init; }
}
