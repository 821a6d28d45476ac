using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// How weather makes ice: background only. It gives no credit to any thickness; a lake user who computed 5.0 in found that the
/// lake did not have it, and the Stefan form is worst where ice is thin.
/// </summary>
public static class IceGrowth
{
    private const double Conductivity = 2.24; // W/m·K
    private const double IceDensity = 916; // kg/m³
    private const double LatentHeat = 3.34e5; // J/kg
    private const double SecondsPerDay = 86_400;

    /// <summary>The physical ceiling of any coefficient: no snow, and a surface as cold as the air.</summary>
    /// <remarks>√(2 k · 86400/(ρ L)) with the constants of G. D. Ashton's encyclopedia article.</remarks>
    public static StefanCoefficient Ceiling { get; } =
        new(100 * Math.Sqrt(2 * Conductivity * SecondsPerDay / (IceDensity * LatentHeat)));

    /// <summary>The Stefan form: α √AFDD.</summary>
    /// <param name="coefficient">Above 0, at most <see cref="Ceiling"/>.</param>
    /// <param name="frost">Accumulated freezing degree-days, from 0 to 20 000 °C·day.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length Stefan(StefanCoefficient coefficient, DegreeDays frost) => Length.FromCentimeters(
        ValidRange.Positive(coefficient.Metric, Ceiling.Metric, "cm/√(°C·day)", nameof(coefficient))
        * Math.Sqrt(ValidRange.Closed(frost.Celsius, 0, 20_000, "°C·day", nameof(frost))));

    /// <summary>Ashton's thin-ice form, with the resistance of air and snow: √((h₀ + R)² + 2 k ΔT t/(ρ L)) - R, R = k/H + k s/kₛ.</summary>
    /// <param name="before">Ice at first, from 0 to 3 m.</param>
    /// <param name="colder">What the air is below freezing, from 0 to 80 °C.</param>
    /// <param name="time">How long, from 0 to 365 days.</param>
    /// <param name="surface">From the surface to the air: 10 (calm) to 30 (windy) W/m²·K, 20 is typical.</param>
    /// <param name="snow">Snow on the ice, from 0 to 3 m.</param>
    /// <param name="snowConductivity">0.1 (new) to 0.4 (packed) W/m·K, from memory.</param>
    /// <remarks>G. D. Ashton, encyclopedia article on lake and river ice; the snow term from memory.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length Ashton(
        Length before, TemperatureDelta colder, Duration time, HeatTransferCoefficient surface, Length snow, ThermalConductivity snowConductivity)
    {
        var first = ValidRange.Closed(before.Meters, 0, 3, "m", nameof(before));
        var resistance =
            (Conductivity / ValidRange.Closed(surface.WattsPerSquareMeterCelsius, 10, 30, "W/m²·K", nameof(surface)))
            + (Conductivity * ValidRange.Closed(snow.Meters, 0, 3, "m", nameof(snow))
                / ValidRange.Closed(snowConductivity.WattsPerMeterKelvin, 0.1, 0.4, "W/m·K", nameof(snowConductivity)));
        var grown = 2 * Conductivity
            * ValidRange.Closed(colder.DegreesCelsius, 0, 80, "°C", nameof(colder))
            * ValidRange.Closed(time.Days, 0, 365, "days", nameof(time)) * SecondsPerDay / (IceDensity * LatentHeat);
        // What is added, as a quotient: a difference of roots would lose all its digits where hardly anything is.
        var thick = first + resistance;
        return Length.FromMeters(first + (grown / (Math.Sqrt((thick * thick) + grown) + thick)));
    }
}
