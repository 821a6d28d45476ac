using UnitsNet;

namespace CrewBot.Core.Pictures;

/// <summary>The water from the ice to the bottom.</summary>
/// <param name="Depth">How deep it is.</param>
/// <param name="DepthLabel">The same in words.</param>
/// <param name="Lures">What hangs in it, left to right.</param>
public sealed record WaterColumn(Length Depth, string DepthLabel, IReadOnlyList<HungLure> Lures);
