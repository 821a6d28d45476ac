using System.Text.Json;

namespace CrewBot.Discord.Wire;

/// <summary>Body of a refusal. The tree of <see cref="Errors"/> mirrors the request that was refused.</summary>
internal sealed record ErrorBody
{
    public int? Code { get; init; }
    public string? Message { get; init; }
    public JsonElement? Errors { get; init; }
}
