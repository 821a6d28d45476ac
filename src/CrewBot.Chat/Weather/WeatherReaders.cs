using CrewBot.Chat.Quantities;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>The quantities that weather commands ask for, each with its limits.</summary>
internal static class WeatherReaders
{
    /// <summary>Air that has a wind chill: -60 °C to 50 °F, where the US form ends.</summary>
    public static QuantityReader<Temperature> Air { get; } = new("degrees with C or F, such as 10F or -12C")
    {
        Noun = "a temperature",
        Dimension = Dimension.Temperature,
        Of = celsius => Temperature.FromDegreesCelsius(celsius),
        Range = (-60, 10),
        Write = (temperature, show) => show.Degrees(temperature),
        Bare = ("F", "C"),
    };

    /// <summary>How hard it blows: 0 to 60 m/s.</summary>
    public static QuantityReader<Speed> Wind { get; } = new("mph, km/h, m/s or knots, such as 15mph")
    {
        Noun = "a wind",
        Dimension = Dimension.Speed,
        Of = speed => Speed.FromMetersPerSecond(speed),
        Range = (0, 60),
        Write = (wind, show) => show.Wind(wind),
        Bare = ("mph", "km/h"),
    };

    /// <summary>What a burner is rated at: 300 W to 30 kW.</summary>
    public static QuantityReader<Power> Heater { get; } = new("BTU/h, W or kW, such as 9000BTU/h")
    {
        Noun = "a heater's rating",
        Dimension = Dimension.Power,
        Of = watts => Power.FromWatts(watts),
        Range = (300, 30_000),
        Write = (power, show) => show.Heat(power, power),
        Bare = ("BTU/h", "W"),
    };

    /// <summary>Propane in a bottle: 50 g to 50 kg.</summary>
    public static QuantityReader<Mass> Bottle { get; } = new("pounds or kilograms of propane, such as 1lb")
    {
        Noun = "a weight of propane",
        Dimension = Dimension.Weight,
        Of = kilograms => Mass.FromKilograms(kilograms),
        Range = (0.05, 50),
        Write = (mass, show) => show.Fish(mass),
        Bare = ("lb", "kg"),
    };

    /// <summary>A side of a shelter: 0.5 to 10 m.</summary>
    public static QuantityReader<Length> Side { get; } = new("feet or metres, such as 6ft")
    {
        Noun = "a side",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.5, 10),
        Write = (side, show) => show.Depth(side),
        Bare = ("ft", "m"),
    };
}
