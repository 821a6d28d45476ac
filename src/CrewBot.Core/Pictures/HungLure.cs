using UnitsNet;

namespace CrewBot.Core.Pictures;

/// <summary>Where a lure hangs.</summary>
/// <param name="Down">How far under the ice.</param>
/// <param name="Label">The same as an angler says it: "6 in (15 cm) off bottom".</param>
public sealed record HungLure(Length Down, string Label);
