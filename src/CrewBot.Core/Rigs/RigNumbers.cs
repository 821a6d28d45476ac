using CrewBot.Core.Fish;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>The arithmetic of a rig.</summary>
public sealed record RigNumbers
{
    public required WeakestLink Weakest { get; init; }

    public required DragSetting Drag { get; init; }

    /// <summary>Nylon of the same thickness as the mainline; null where the table does not reach.</summary>
    public required Force? NylonEquivalent { get; init; }

    /// <summary>How far the mainline gives under the drag's full pull at that depth.</summary>
    public required Length Stretch { get; init; }

    /// <summary>What is left of a lift of the rod once the line has given.</summary>
    public required Ratio LiftAtLure { get; init; }

    public required Density WaterDensity { get; init; }

    public required DynamicViscosity WaterViscosity { get; init; }

    /// <summary>A ball of the lure's mass and density.</summary>
    public required Length LureDiameter { get; init; }

    public required Force WetWeight { get; init; }

    /// <summary>Bare sinking speed, slow and fast end.</summary>
    public required (Speed Slow, Speed Fast) Settling { get; init; }

    /// <summary>Time to depth with the line's drag, fast and slow end.</summary>
    public required (Duration Fast, Duration Slow) Drop { get; init; }

    /// <summary>Where a current takes it; no lean in still water.</summary>
    public required Blowback Blowback { get; init; }

    public required HoleFit Hole { get; init; }
}
