using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>How ice floats, as background to water coming up through a hole.</summary>
/// <remarks>Buoyancy with 916 kg/m³ for ice and 1000 for water.</remarks>
public static class FloatingIce
{
    private const double IceDensity = 916;
    private const double WaterDensity = 1000;

    /// <summary>What bare ice stands out of the water. A dry hole proves nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ice"/> is not from 0 to 3 m.</exception>
    public static Length Freeboard(Length ice) => Length.FromMeters(Metres(ice) * (1 - (IceDensity / WaterDensity)));

    /// <summary>The snow that pushes the surface under water: slush and overflow.</summary>
    /// <param name="ice">From 0 to 3 m.</param>
    /// <param name="snow">Density of the snow, from 20 to 600 kg/m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length SnowThatFloods(Length ice, Density snow) => Length.FromMeters(
        Metres(ice) * (WaterDensity - IceDensity)
        / ValidRange.Closed(snow.KilogramsPerCubicMeter, 20, 600, "kg/m³", nameof(snow)));

    private static double Metres(Length ice) => ValidRange.Closed(ice.Meters, 0, 3, "m", nameof(ice));
}
