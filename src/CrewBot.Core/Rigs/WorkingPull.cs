using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What a fish asks of the weakest link.</summary>
public static class WorkingPull
{
    // Carried by the water and played on a drag, a fish pulls less than it weighs: half is the margin this project keeps.
    private const double ShareOfWeight = 0.5;

    /// <summary>The pull that a rig must stand at the low end of its range.</summary>
    /// <param name="fish">Mass of the fish, above zero.</param>
    /// <remarks>Source: common practice, a judgement.</remarks>
    public static Force Of(Mass fish) => Force.FromKilogramsForce(fish.Kilograms * ShareOfWeight);
}
