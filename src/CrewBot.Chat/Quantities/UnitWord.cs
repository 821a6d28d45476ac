using System.Collections.Frozen;

namespace CrewBot.Chat.Quantities;

/// <summary>A unit as people write it.</summary>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">How many base units one is: metre, kilogram, degree Celsius, metre a second, second, g/cm³, watt.</param>
/// <param name="Zero">Where its zero stands in base units: only Fahrenheit's is not at zero.</param>
internal sealed record UnitWord(Dimension Dimension, double Factor, double Zero = 0)
{
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;
    private const double BtuPerHour = 1055.05585262 / 3600; // the international table's

    private static readonly FrozenDictionary<string, UnitWord> Known = Spellings().ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Finds a unit by any of its spellings, spaces and hyphens apart: "10-lb test"; null when there is none.</summary>
    public static UnitWord? Find(string spelling) =>
        Known.GetValueOrDefault(spelling.Trim().TrimEnd('.').ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal));

    /// <summary>Whether a text is a length in inches or centimetres, as fish are measured; water is told in feet, metres and fathoms.</summary>
    public static bool MeasuresFish(string text) =>
        NumberText.Split(text) is { } split && Find(split.After) is { Dimension: Dimension.Length, Factor: <= Inch };

    public double ToBase(double number) => Zero + (number * Factor);

    private static IEnumerable<KeyValuePair<string, UnitWord>> Spellings()
    {
        (UnitWord Unit, string[] Words)[] units =
        [
            (new(Dimension.Length, 1), ["m", "meter", "meters", "metre", "metres"]),
            (new(Dimension.Length, 0.01), ["cm", "centimeter", "centimeters", "centimetre", "centimetres"]),
            (new(Dimension.Length, 0.001), ["mm", "millimeter", "millimeters", "millimetre", "millimetres"]),
            (new(Dimension.Length, 12 * Inch), ["ft", "foot", "feet", "'", "′", "’", "fow"]),
            (new(Dimension.Length, Inch), ["in", "inch", "inches", "\"", "″", "”", "''"]),
            (new(Dimension.Length, 36 * Inch), ["yd", "yds", "yard", "yards"]),
            (new(Dimension.Length, 72 * Inch), ["fathom", "fathoms", "fm", "ftm"]),
            (new(Dimension.Weight, 0.001), ["g", "gr", "gram", "grams", "gramme", "grammes"]),
            (new(Dimension.Weight, 1), ["kg", "kilo", "kilos", "kilogram", "kilograms"]),
            (new(Dimension.Weight, Pound / 16), ["oz", "ounce", "ounces"]),
            (new(Dimension.Weight, Pound), ["lb", "lbs", "pound", "pounds", "#", "lbtest", "lbstest", "poundtest", "#test"]),
            (new(Dimension.Temperature, 1), ["c", "°c", "degc", "celsius"]),
            (new(Dimension.Temperature, 5.0 / 9, -160.0 / 9), ["f", "°f", "degf", "fahrenheit"]),
            (new(Dimension.Speed, 1), ["m/s", "mps"]),
            (new(Dimension.Speed, 0.01), ["cm/s"]),
            (new(Dimension.Speed, 12 * Inch), ["ft/s", "fps"]),
            (new(Dimension.Speed, 1.0 / 3.6), ["km/h", "kmh", "kph"]),
            (new(Dimension.Speed, 1609.344 / 3600), ["mph"]),
            (new(Dimension.Speed, 1852.0 / 3600), ["kn", "kt", "kts", "knot", "knots"]),
            (new(Dimension.Time, 1), ["s", "sec", "secs", "second", "seconds"]),
            (new(Dimension.Time, 60), ["min", "mins", "minute", "minutes"]),
            (new(Dimension.Density, 1), ["g/cm3", "g/cm³", "g/cc", "g/ml"]),
            (new(Dimension.Density, 0.001), ["kg/m3", "kg/m³"]),
            (new(Dimension.Power, 1), ["w", "watt", "watts"]),
            (new(Dimension.Power, 1000), ["kw", "kilowatt", "kilowatts"]),
            (new(Dimension.Power, BtuPerHour), ["btu/h", "btu/hr", "btuh", "btu"]),
        ];
        return units.SelectMany(unit => unit.Words.Select(word => KeyValuePair.Create(word, unit.Unit)));
    }
}
