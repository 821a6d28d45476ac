using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>How far the gas in a fish's closed bladder swells on the way up.</summary>
public static class BarotraumaExpansion
{
    private const double WaterDensity = 1000; // kg/m³, fresh

    /// <summary>
    /// Pressure at sea level in the standard atmosphere. High lakes have less, and their fish swell more.
    /// </summary>
    public static Pressure SeaLevel { get; } = Pressure.FromAtmospheres(1);

    /// <summary>
    /// Computes the factor by which the volume grows from a depth to the surface: 1 + ρ g h/p (Boyle's law).
    /// </summary>
    /// <param name="depth">Depth the fish is adjusted to, from 0 to 200 m.</param>
    /// <param name="surface">Air pressure at the lake, from 50 to 110 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static double FactorFrom(Length depth, Pressure surface)
    {
        var metres = ValidRange.Closed(depth.Meters, 0, 200, "m", nameof(depth));
        var pascals = ValidRange.Closed(surface.Pascals, 50_000, 110_000, "Pa", nameof(surface));
        return 1 + (WaterDensity * Gravity.Standard * metres / pascals);
    }
}
