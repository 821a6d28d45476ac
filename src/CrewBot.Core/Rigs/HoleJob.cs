using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What one hole of a crew's spread is for.</summary>
/// <param name="Job">Which job.</param>
/// <param name="Rig">What is fished in it.</param>
/// <param name="Depth">How deep the water under it is.</param>
public sealed record HoleJob(SpreadJob Job, Rig Rig, Length Depth);
