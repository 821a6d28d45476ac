using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>One row of a line maker's or the trade's table.</summary>
/// <param name="Test">The strength on the label.</param>
/// <param name="Diameter">The diameter on the label; for braid, of the nominal circle.</param>
public sealed record LineSize(Force Test, Length Diameter);
