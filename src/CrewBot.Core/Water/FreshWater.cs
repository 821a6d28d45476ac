using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>Properties of pure fresh water at atmospheric pressure, 0 to 30 °C.</summary>
/// <remarks>
/// Depth hardly matters: 30 m of water raises the density by about 0.015 %. Density is greatest near 3.98 °C, so one
/// density belongs to two temperatures; do not search a temperature from it.
/// </remarks>
public static class FreshWater
{
    private const double MinCelsius = 0;
    private const double MaxCelsius = 30;
    private const double KelvinAtZeroCelsius = 273.15;

    /// <summary>Computes the density of pure, air-free water.</summary>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The density; computed in kg/m³.</returns>
    /// <remarks>
    /// Source: Tanaka, Girard, Davis, Peuto and Bignell (2001), Metrologia 38, 301–309, table 1. The source covers
    /// 0 to 40 °C; 30 °C is the end of the range in which density and viscosity were checked together.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="water"/> lies outside 0 to 30 °C.</exception>
    public static Density DensityAt(Temperature water) =>
        Density.FromKilogramsPerCubicMeter(DensityAtCelsius(Celsius(water)));

    /// <summary>Computes the dynamic viscosity of liquid water at 0.1 MPa.</summary>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The viscosity, good to about 1 %; computed in Pa·s.</returns>
    /// <remarks>Source: IAPWS SR6-08(2011), liquid water at 0.1 MPa, the equation for viscosity.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="water"/> lies outside 0 to 30 °C.</exception>
    public static DynamicViscosity ViscosityAt(Temperature water) =>
        DynamicViscosity.FromPascalSeconds(ViscosityAtCelsius(Celsius(water)));

    internal static WaterState StateAt(Temperature water)
    {
        var celsius = Celsius(water);
        return new WaterState(DensityAtCelsius(celsius), ViscosityAtCelsius(celsius));
    }

    private static double Celsius(Temperature water) =>
        ValidRange.Closed(water.DegreesCelsius, MinCelsius, MaxCelsius, "°C", nameof(water));

    private static double DensityAtCelsius(double celsius)
    {
        var offPeak = celsius - 3.983035;
        return 999.974950 * (1 - (offPeak * offPeak * (celsius + 301.797) / (522528.9 * (celsius + 69.34881))));
    }

    private static double ViscosityAtCelsius(double celsius)
    {
        var logReduced = Math.Log((celsius + KelvinAtZeroCelsius) / 300);
        return 1e-6 * ((280.68 * Math.Exp(-1.9 * logReduced))
            + (511.45 * Math.Exp(-7.7 * logReduced))
            + (61.131 * Math.Exp(-19.6 * logReduced))
            + (0.45903 * Math.Exp(-40 * logReduced)));
    }
}
