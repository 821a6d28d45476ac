using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>How cold wind makes bare skin feel: an index, not a temperature of anything.</summary>
public static class WindChill
{
    private const double LeastMph = 3;
    private const double MostFahrenheit = 50;
    private const double LeastKmh = 5;

    /// <summary>The US form, for sustained wind 10 m (33 ft) above the ground.</summary>
    /// <param name="air">Air temperature, at least -90 °C.</param>
    /// <param name="wind">Wind, from 0 to 60 m/s.</param>
    /// <returns>The index; the air temperature itself below 3 mph or above 50 °F, where the form does not hold.</returns>
    /// <remarks>US National Weather Service (2001): 35.74 + 0.6215 T - 35.75 V^0.16 + 0.4275 T V^0.16, °F and mph.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Temperature American(Temperature air, Speed wind)
    {
        var (degrees, speed) = (Fahrenheit(air), MetresPerSecond(wind) * 3600 / 1609.344);
        return speed < LeastMph || degrees > MostFahrenheit
            ? air
            : Temperature.FromDegreesFahrenheit(Index(degrees, speed, 35.74, 0.6215, -35.75, 0.4275));
    }

    /// <summary>The Canadian form, for sustained wind 10 m above the ground.</summary>
    /// <param name="air">Air temperature, at least -90 °C.</param>
    /// <param name="wind">Wind, from 0 to 60 m/s.</param>
    /// <returns>The index, in degrees Celsius for the sake of comparison.</returns>
    /// <remarks>
    /// Environment Canada (2001): 13.12 + 0.6215 T - 11.37 V^0.16 + 0.3965 T V^0.16, °C and km/h; below 5 km/h
    /// T + (-1.59 + 0.1345 T) V/5 (from memory).
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Temperature Canadian(Temperature air, Speed wind)
    {
        var (degrees, speed) = (Celsius(air), MetresPerSecond(wind) * 3.6);
        return Temperature.FromDegreesCelsius(speed < LeastKmh
            ? degrees + ((-1.59 + (0.1345 * degrees)) * speed / LeastKmh)
            : Index(degrees, speed, 13.12, 0.6215, -11.37, 0.3965));
    }

    /// <summary>The whole number that charts print: half goes up.</summary>
    public static int Printed(double index) => (int)Math.Floor(index + 0.5);

    private static double Index(double degrees, double speed, double constant, double still, double wind, double both)
    {
        var power = Math.Pow(speed, 0.16);
        return constant + (still * degrees) + (wind * power) + (both * degrees * power);
    }

    private static double Celsius(Temperature air) => ValidRange.Closed(air.DegreesCelsius, -90, 60, "°C", nameof(air));

    private static double Fahrenheit(Temperature air) => 32 + (1.8 * Celsius(air));

    private static double MetresPerSecond(Speed wind) => ValidRange.Closed(wind.MetersPerSecond, 0, 60, "m/s", nameof(wind));
}
