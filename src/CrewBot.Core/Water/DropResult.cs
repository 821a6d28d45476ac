using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>How a lure gets to a depth.</summary>
/// <param name="Time">Time from letting go at the surface.</param>
/// <param name="EndSpeed">Speed at which it passes the depth.</param>
public readonly record struct DropResult(Duration Time, Speed EndSpeed);
