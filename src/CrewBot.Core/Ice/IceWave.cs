using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// The wave that a moving load makes under ice; near its speed the ice bends most. Background physics, never an advised speed.
/// </summary>
public static class IceWave
{
    private const double WaterDensity = 1000;

    /// <summary>In shallow water: √(g H).</summary>
    /// <param name="depth">Of the water, from 0 to 100 m.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="depth"/> lies outside its range.</exception>
    public static Speed InShallowWater(Length depth) =>
        Speed.FromMetersPerSecond(Math.Sqrt(Gravity.Standard * ValidRange.Closed(depth.Meters, 0, 100, "m", nameof(depth))));

    /// <summary>In deep water, the least phase speed of flexural-gravity waves: 2 (D g³/(27 ρ))^(1/8), D = E h³/(12 (1 - ν²)).</summary>
    /// <param name="ice">Thickness, from 0 to 3 m.</param>
    /// <param name="stiffness">Young's modulus, above 0.</param>
    /// <param name="poisson">Poisson's ratio, from 0 to 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Speed InDeepWater(Length ice, Pressure stiffness, Ratio poisson)
    {
        var contraction = ValidRange.Closed(poisson.DecimalFractions, 0, 0.5, "", nameof(poisson));
        var rigidity = ValidRange.Positive(stiffness.Pascals, "Pa", nameof(stiffness))
            * Math.Pow(ValidRange.Closed(ice.Meters, 0, 3, "m", nameof(ice)), 3) / (12 * (1 - (contraction * contraction)));
        return Speed.FromMetersPerSecond(2 * Math.Pow(rigidity * Math.Pow(Gravity.Standard, 3) / (27 * WaterDensity), 1.0 / 8));
    }
}
