using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>How soon bare skin freezes: by the band of the index and, where it holds, by a formula.</summary>
/// <param name="Band">The band of the Canadian index.</param>
/// <param name="Computed">What the formula gives; null outside its range.</param>
public sealed record Frostbite(FrostbiteBand Band, Duration? Computed)
{
    private const double GustyKmh = 50;

    /// <summary>Whether the formula is quicker than the whole band: then it is the one to name.</summary>
    public bool FormulaIsSooner => Computed is { } time && (Band.Soonest is not { } soonest || time < soonest);

    /// <summary>The shorter of the two: the time to go by; null where the risk is low.</summary>
    public Duration? Soonest => FormulaIsSooner ? Computed : Band.Soonest;

    /// <summary>Whether the table warns that it may be faster still.</summary>
    public required bool FasterInThisWind { get; init; }

    /// <summary>Looks up and computes.</summary>
    /// <param name="air">Air temperature, from -90 to 60 °C.</param>
    /// <param name="wind">Sustained wind, from 0 to 60 m/s.</param>
    /// <remarks>
    /// Formula: t[min] = (-24.5 (0.667 V + 4.8) + 2111)(-4.8 - T)^-1.668, °C and km/h, for the most susceptible few per cent
    /// (coefficients seen in public code; its limits, above 25 to 80 km/h and below -15 °C, from memory). Band and formula
    /// disagree both ways, so the shorter is given.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Frostbite Of(Temperature air, Speed wind)
    {
        var index = WindChill.Printed(WindChill.Canadian(air, wind).DegreesCelsius);
        var speed = wind.KilometersPerHour;
        return new Frostbite(FrostbiteBand.Of(index), Time(air.DegreesCelsius, speed)) { FasterInThisWind = speed > GustyKmh };
    }

    private static Duration? Time(double celsius, double kmh) => kmh is > 25 and <= 80 && celsius < -15
        ? Duration.FromMinutes(((-24.5 * ((0.667 * kmh) + 4.8)) + 2111) * Math.Pow(-4.8 - celsius, -1.668))
        : null;
}
