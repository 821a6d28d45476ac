using UnitsNet;

namespace CrewBot.Core.Pictures;

/// <summary>A thickness that a published rule asks for.</summary>
/// <param name="Thickness">How thick.</param>
/// <param name="Label">What for: "on foot, 4 in".</param>
public sealed record RequiredIce(Length Thickness, string Label);
