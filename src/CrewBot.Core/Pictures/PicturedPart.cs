using UnitsNet;

namespace CrewBot.Core.Pictures;

/// <summary>One part of a rig.</summary>
/// <param name="Kind">What it is, which decides its sign.</param>
/// <param name="Label">Material, test, knot or size, in words.</param>
public sealed record PicturedPart(PartKind Kind, string Label)
{
    /// <summary>How long it is, for parts drawn to scale; null for the others.</summary>
    public Length? Length { get; init; }

    /// <summary>The pull at which it gives way, in words, where it is the weakest of the rig; null elsewhere.</summary>
    public string? Weakest { get; init; }
}
