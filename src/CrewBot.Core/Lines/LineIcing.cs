using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>How soon the water that a line carries up freezes on it. Order of magnitude only.</summary>
public static class LineIcing
{
    private const double IceDensity = 917; // kg/m³
    private const double LatentHeat = 333.6e3; // J/kg, freezing of water at 0 °C
    private const double LeastPeclet = 0.2;

    /// <summary>Computes the heat transfer coefficient of thin line across the wind.</summary>
    /// <param name="diameter">Diameter of the line, above 0.</param>
    /// <param name="wind">Wind across it, above 0; Reynolds times Prandtl number must exceed 0.2.</param>
    /// <param name="air">Properties of the air.</param>
    /// <remarks>Source: Churchill and Bernstein (1977), cylinder in cross-flow.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is not above zero, or the air moves too slowly for the correlation.
    /// </exception>
    public static HeatTransferCoefficient CoefficientInWind(Length diameter, Speed wind, AirFilm air)
    {
        ValidRange.Positive(diameter.Meters, "m", nameof(diameter));
        ValidRange.Positive(wind.MetersPerSecond, "m/s", nameof(wind));
        var reynolds = wind.MetersPerSecond * diameter.Meters / air.Viscosity.SquareMetersPerSecond;
        if (!(reynolds * air.Prandtl > LeastPeclet))
        {
            throw new ArgumentOutOfRangeException(
                nameof(wind), wind.MetersPerSecond, "Too slow: Reynolds times Prandtl number must exceed 0.2.");
        }

        var nusselt = 0.3
            + (0.62 * Math.Sqrt(reynolds) * Math.Cbrt(air.Prandtl)
                / Math.Pow(1 + Math.Pow(0.4 / air.Prandtl, 2.0 / 3), 0.25)
                * Math.Pow(1 + Math.Pow(reynolds / 282_000, 5.0 / 8), 0.8));
        return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(
            nusselt * air.Conductivity.WattsPerMeterKelvin / diameter.Meters);
    }

    /// <summary>Computes how long a film of water at 0 °C takes to freeze on the line: ρ L e/(h ΔT).</summary>
    /// <param name="film">Thickness of the film, above 0; 20–50 µm is likely (judgement).</param>
    /// <param name="coefficient">Heat transfer coefficient, above 0; near 50 W/(m²·K) in still air (judgement).</param>
    /// <param name="belowFreezing">How far the air is below 0 °C, above 0.</param>
    /// <remarks>Latent heat balance; supercooling and radiation left out.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above zero.</exception>
    public static Duration FreezeTime(Length film, HeatTransferCoefficient coefficient, TemperatureDelta belowFreezing)
    {
        ValidRange.Positive(film.Meters, "m", nameof(film));
        ValidRange.Positive(coefficient.WattsPerSquareMeterKelvin, "W/(m²·K)", nameof(coefficient));
        ValidRange.Positive(belowFreezing.Kelvins, "K", nameof(belowFreezing));
        return Duration.FromSeconds(
            IceDensity * LatentHeat * film.Meters / (coefficient.WattsPerSquareMeterKelvin * belowFreezing.Kelvins));
    }
}
