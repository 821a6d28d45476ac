using System.Globalization;
using CrewBot.Chat.Commands;
using UnitsNet;

namespace CrewBot.Chat.Quantities;

/// <summary>Writes quantities the way a caller reads them: their own units first, the other in brackets.</summary>
/// <remarks>
/// It also formats the explanations that Core gives as text with quantities in it. Where a quantity needs more than its
/// usual form, the format says so: <c>gap</c> for a short length, <c>fine</c> for a diameter, <c>lure</c> for a small
/// mass, <c>short</c> for the caller's units alone.
/// </remarks>
public sealed class Showing : IFormatProvider, ICustomFormatter
{
    private static readonly Showing Customary = new(customaryFirst: true);
    private static readonly Showing Metric = new(customaryFirst: false);

    private readonly bool _customaryFirst;

    private Showing(bool customaryFirst) => _customaryFirst = customaryFirst;

    public static Showing In(CrewUnits units) => units == CrewUnits.Customary ? Customary : Metric;

    /// <summary>A depth: "24 ft (7.3 m)".</summary>
    public string Depth(Length depth) => Pair(Round(depth.Feet, 1), "ft", Round(depth.Meters, 1), "m");

    /// <summary>Line on a reel: "196 yd (179 m)".</summary>
    public string Reel(Length line) => Pair(Round(line.Yards, 0), "yd", Round(line.Meters, 0), "m");

    /// <summary>A length at hand: "30 in (76 cm)".</summary>
    public string Gap(Length gap) => Pair(GapInInches(gap), GapInCentimetres(gap));

    /// <summary>A diameter: always in millimetres, as labels give it.</summary>
    public static string Fine(Length diameter)
    {
        var millimetres = diameter.Millimeters;
        return $"{(millimetres < 1 ? NumberWriting.Hundredths(millimetres) : NumberWriting.Tenths(millimetres))} mm";
    }

    /// <summary>The mass of a lure: "1/8 oz (3.5 g)".</summary>
    public string Lure(Mass mass) => Pair($"{Fraction(mass.Ounces)} oz", $"{Text(Significant(mass.Grams))} g");

    /// <summary>The mass of a fish: "4.4 lb (2 kg)".</summary>
    public string Fish(Mass mass) => Pair(Significant(mass.Pounds), "lb", Significant(mass.Kilograms), "kg");

    /// <summary>A line's test, as its label gives it: "10 lb (4.5 kg)".</summary>
    public string Test(Force test) => Pair(Round(test.PoundsForce, 1), "lb", Round(test.KilogramsForce, 1), "kg");

    /// <summary>A pull as a hand scale reads it: "3.0 lb (1.4 kg)".</summary>
    public string Pull(Force pull) => Pair($"{Tenth(pull.PoundsForce)} lb", $"{Tenth(pull.KilogramsForce)} kg");

    /// <summary>A range of pulls: "3.0–4.8 lb (1.4–2.2 kg)"; one pull where both ends read the same.</summary>
    public string Pulls(Force low, Force high) => Pair(
        $"{Tenths(low.PoundsForce, high.PoundsForce)} lb", $"{Tenths(low.KilogramsForce, high.KilogramsForce)} kg");

    /// <summary>A temperature: "10 °F (-12 °C)".</summary>
    public string Degrees(Temperature temperature) =>
        Pair(Round(temperature.DegreesFahrenheit, 0), "°F", Round(temperature.DegreesCelsius, 0), "°C");

    /// <summary>A current or a sinking speed: "2.1 ft/s (0.64 m/s)".</summary>
    public string Pace(Speed speed) => Pair(Significant(speed.FeetPerSecond), "ft/s", Significant(speed.MetersPerSecond), "m/s");

    /// <summary>A wind: "15 mph (24 km/h)".</summary>
    public string Wind(Speed wind) => Pair(Round(wind.MilesPerHour, 0), "mph", Round(wind.KilometersPerHour, 0), "km/h");

    /// <summary>How much warmer: "45 °F (25 °C)".</summary>
    public string Warmer(TemperatureDelta warmer) => Pair(Round(warmer.DegreesCelsius * 1.8, 0), "°F", Round(warmer.DegreesCelsius, 0), "°C");

    /// <summary>A range of heat: "9800–10900 BTU/h (2.9–3.2 kW)"; one where both ends read the same.</summary>
    public string Heat(Power low, Power high) => Pair(
        $"{Range(Hundreds((double)low.BritishThermalUnitsPerHour), Hundreds((double)high.BritishThermalUnitsPerHour))} BTU/h",
        $"{Range(Tenth((double)low.Kilowatts), Tenth((double)high.Kilowatts))} kW");

    /// <summary>A span of time: "8 s", "1 min 20 s"; nothing takes "0 s".</summary>
    public static string Span(Duration time)
    {
        var seconds = Math.Max(1, (int)Math.Round(time.Seconds, MidpointRounding.AwayFromZero));
        return seconds < 90 ? $"{seconds} s" : $"{seconds / 60} min {seconds % 60} s";
    }

    public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

    public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
    {
        Length length => format switch
        {
            "gap" => Gap(length),
            "fine" => Fine(length),
            _ => Depth(length),
        },
        Mass mass => format == "lure" ? Lure(mass) : Fish(mass),
        Force force => format == "test" ? Test(force) : Pull(force),
        Temperature temperature => Degrees(temperature),
        Speed speed => Pace(speed),
        Duration time => Span(time),
        Angle angle => $"{Text(Round(angle.Degrees, 0))}°",
        IFormattable other => other.ToString(format, CultureInfo.InvariantCulture),
        _ => arg?.ToString() ?? "",
    };

    private string Pair(double customary, string customaryUnit, double metric, string metricUnit) => _customaryFirst
        ? Written(customary, customaryUnit, metric, metricUnit)
        : Written(metric, metricUnit, customary, customaryUnit);

    private static string Written(double first, string firstUnit, double second, string secondUnit) =>
        $"{Text(first)} {firstUnit} ({Text(second)} {secondUnit})";

    private string Pair(string customary, string metric) =>
        _customaryFirst ? $"{customary} ({metric})" : $"{metric} ({customary})";

    private static string GapInInches(Length gap) => gap.Inches switch
    {
        < 0.995 and var inches => $"{Fraction(inches)} in",
        < 36 and var inches => $"{Text(Round(inches, inches < 10 ? 1 : 0))} in",
        _ => $"{Text(Round(gap.Feet, 1))} ft",
    };

    private static string GapInCentimetres(Length gap) => gap.Centimeters switch
    {
        < 1 => $"{Text(Round(gap.Millimeters, 0))} mm",
        < 91 and var centimetres => $"{Text(Round(centimetres, 0))} cm",
        _ => $"{Text(Round(gap.Meters, 1))} m",
    };

    // Labels give small weights as fractions of an ounce: binary ones, or one over a whole number.
    private static string Fraction(double ounces)
    {
        if (ounces == 0)
        {
            return "0";
        }

        var parts = Math.Round(1 / ounces);
        if (ounces < 0.3 && parts <= 128 && Math.Abs((1 / ounces) - parts) < 0.01 * parts)
        {
            return $"1/{Text(parts)}";
        }

        var sixtyFourths = (int)Math.Round(ounces * 64);
        if (Math.Abs((ounces * 64) - sixtyFourths) > 0.02 || sixtyFourths == 0)
        {
            return Text(Significant(ounces));
        }

        var whole = sixtyFourths / 64;
        var part = sixtyFourths % 64;
        if (part == 0)
        {
            return $"{whole}";
        }

        var divisor = part & -part; // what it has in common with 64
        var fraction = $"{part / divisor}/{64 / divisor}";
        return whole == 0 ? fraction : $"{whole} {fraction}";
    }

    private static string Tenths(double low, double high) => Range(Tenth(low), Tenth(high));

    private static string Range(string low, string high) => low == high ? low : $"{low}–{high}";

    private static string Hundreds(double number) => Text(100 * Round(number / 100, 0));

    private static string Tenth(double number) => NumberWriting.Tenths(number);

    private static string Text(double number) => NumberWriting.Shortest(number);

    private static double Round(double number, int places) =>
        Math.Round(number, places, MidpointRounding.AwayFromZero) + 0.0; // no negative zero

    // Two figures are as much as the trade's numbers bear.
    private static double Significant(double number) => Round(number, Math.Abs(number) switch
    {
        >= 10 => 0,
        >= 1 => 1,
        >= 0.1 => 2,
        >= 0.01 => 3,
        _ => 4,
    });
}
