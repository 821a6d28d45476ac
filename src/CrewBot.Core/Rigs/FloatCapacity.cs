using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>The load that sinks a float to its tip.</summary>
/// <remarks>
/// Archimedes. Shot clamped above the surface, and the float's own stem standing out of it, do not count.
/// </remarks>
public static class FloatCapacity
{
    /// <summary>Computes the load as it weighs in the water: ρ V less the float's own mass.</summary>
    /// <param name="volume">Volume of the float, above 0.</param>
    /// <param name="own">Mass of the float, above 0.</param>
    /// <param name="water">Density of the water, above 0.</param>
    /// <returns>The load; zero for a float that sinks by itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above zero.</exception>
    public static Mass Immersed(Volume volume, Mass own, Density water)
    {
        ValidRange.Positive(volume.CubicMeters, "m³", nameof(volume));
        ValidRange.Positive(own.Kilograms, "kg", nameof(own));
        ValidRange.Positive(water.KilogramsPerCubicMeter, "kg/m³", nameof(water));
        return Mass.FromKilograms(Math.Max(0, (water.KilogramsPerCubicMeter * volume.CubicMeters) - own.Kilograms));
    }

    /// <summary>Computes the same load as shot weighed in air, which is how floats are marked.</summary>
    /// <param name="immersed">The load as it weighs in the water, 0 or more.</param>
    /// <param name="shot">Density of the shot, above that of the water.</param>
    /// <param name="water">Density of the water, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Mass ShotInAir(Mass immersed, Density shot, Density water)
    {
        ValidRange.NotNegative(immersed.Kilograms, "kg", nameof(immersed));
        ValidRange.Positive(water.KilogramsPerCubicMeter, "kg/m³", nameof(water));
        var shareLeft = ValidRange.Positive(
            1 - (water.KilogramsPerCubicMeter / shot.KilogramsPerCubicMeter), "of its weight in water", nameof(shot));
        return Mass.FromKilograms(immersed.Kilograms / shareLeft);
    }
}
