using UnitsNet;

namespace CrewBot.Chat.Quantities;

/// <summary>The quantities that commands ask for, each with its limits.</summary>
public static class QuantityReaders
{
    /// <summary>How deep: 0.3 to 150 m.</summary>
    public static QuantityReader<Length> Depth { get; } = new("feet, metres or fathoms, such as 24ft")
    {
        Noun = "a depth",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.3, 150),
        Write = (depth, show) => show.Depth(depth),
        Bare = ("ft", "m"),
    };

    /// <summary>How wide a hole is: 8 to 50 cm.</summary>
    public static QuantityReader<Length> Hole { get; } = new("inches or centimetres, such as 8in")
    {
        Noun = "a hole's diameter",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.08, 0.5),
        Write = (hole, show) => show.Gap(hole),
        Bare = ("in", "cm"),
    };

    /// <summary>How long something at hand is: 1 cm to 5 m.</summary>
    public static QuantityReader<Length> Gap { get; } = new("inches, feet or centimetres, such as 24in")
    {
        Noun = "a length",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.01, 5),
        Write = (length, show) => show.Gap(length),
        Bare = ("in", "cm"),
    };

    /// <summary>How thick a line is: 0.02 to 1 mm.</summary>
    public static QuantityReader<Length> Diameter { get; } = new("millimetres or inches, such as 0.18mm")
    {
        Noun = "a diameter",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.00002, 0.001),
        Write = (diameter, _) => Showing.Fine(diameter),
    };

    /// <summary>How much line: 1 to 1000 m.</summary>
    public static QuantityReader<Length> LineLength { get; } = new("metres or yards, such as 120m")
    {
        Noun = "a length of line",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (1, 1000),
        Write = (length, show) => show.Reel(length),
        Bare = ("yd", "m"),
    };

    /// <summary>How heavy a lure is: 0.05 to 250 g.</summary>
    public static QuantityReader<Mass> LureWeight { get; } = new("ounces or grams, such as 1/8oz")
    {
        Noun = "a lure's weight",
        Dimension = Dimension.Weight,
        Of = kilograms => Mass.FromKilograms(kilograms),
        Range = (0.00005, 0.25),
        Write = (weight, show) => show.Lure(weight),
        Bare = ("oz", "g"),
    };

    /// <summary>What a line is labelled to hold: 0.5 to 150 lb.</summary>
    public static QuantityReader<Force> Test { get; } = new("pounds or kilograms, such as 10lb")
    {
        Noun = "a line's test",
        Dimension = Dimension.Weight,
        Of = kilograms => Force.FromKilogramsForce(kilograms),
        Range = (0.2, 70),
        Write = (test, show) => show.Test(test),
        Bare = ("lb", "kg"),
    };

    /// <summary>How cold the air is: -60 to 30 °C.</summary>
    public static QuantityReader<Temperature> Air { get; } = new("degrees with C or F, such as 10F or -12C")
    {
        Noun = "a temperature",
        Dimension = Dimension.Temperature,
        Of = celsius => Temperature.FromDegreesCelsius(celsius),
        Range = (-60, 30),
        Write = (temperature, show) => show.Degrees(temperature),
        Bare = ("F", "C"),
    };

    /// <summary>How cold the water is: 0 to 30 °C.</summary>
    public static QuantityReader<Temperature> Water { get; } = new("degrees with C or F, such as 34F or 1C")
    {
        Noun = "a temperature",
        Dimension = Dimension.Temperature,
        Of = celsius => Temperature.FromDegreesCelsius(Math.Max(0, celsius)),
        Range = (-1e-9, 30),
        Write = (temperature, show) => show.Degrees(temperature),
        Bare = ("F", "C"),
    };

    /// <summary>How fast the water runs: 0 to 1 m/s.</summary>
    public static QuantityReader<Speed> Current { get; } = new("a speed, such as 0.1m/s or 0.3ft/s")
    {
        Noun = "a current",
        Dimension = Dimension.Speed,
        Of = speed => Speed.FromMetersPerSecond(speed),
        Range = (0, 1),
        Write = (speed, show) => show.Pace(speed),
        Bare = ("ft/s", "m/s"),
    };

    /// <summary>How dense a lure is: 1.01 to 22 g/cm³.</summary>
    public static QuantityReader<Density> LureDensity { get; } = new("grams per cubic centimetre, such as 11.34")
    {
        Noun = "a density",
        Dimension = Dimension.Density,
        Of = density => Density.FromGramsPerCubicCentimeter(density),
        Range = (1.01, 22),
        Write = (density, _) => $"{density.GramsPerCubicCentimeter:0.##} g/cm3",
        Bare = ("g/cm3", "g/cm3"),
    };

    /// <summary>How long a fish is: 1 cm to 3 m.</summary>
    public static QuantityReader<Length> FishLength { get; } = new("inches or centimetres, such as 22.5in")
    {
        Noun = "a fish's length",
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0.01, 3),
        Write = (length, show) => show.Gap(length),
        Bare = ("in", "cm"),
    };

    /// <summary>How heavy a fish is: 1 g to 100 kg.</summary>
    public static QuantityReader<Mass> FishWeight { get; } = new("pounds, ounces or kilograms, such as 4.5lb")
    {
        Noun = "a fish's weight",
        Dimension = Dimension.Weight,
        Of = kilograms => Mass.FromKilograms(kilograms),
        Range = (0.001, 100),
        Write = (weight, show) => show.Fish(weight),
        Bare = ("lb", "kg"),
    };
}
