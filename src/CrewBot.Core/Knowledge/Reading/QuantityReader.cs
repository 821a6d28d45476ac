using System.Globalization;
using CrewBot.Core.Rigs;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Reads quantities with their unit, such as <c>"1/8 oz"</c> or <c>"24 ft"</c>, and hook sizes.</summary>
internal static class QuantityReader
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    public static Length Length(StatedValue stated) => Read<Length>(stated, "24 ft", (number, unit) => unit switch
    {
        "m" => UnitsNet.Length.FromMeters(number),
        "cm" => UnitsNet.Length.FromCentimeters(number),
        "mm" => UnitsNet.Length.FromMillimeters(number),
        "ft" => UnitsNet.Length.FromFeet(number),
        "in" => UnitsNet.Length.FromInches(number),
        _ => null,
    });

    // Kept in kilograms: from the base unit every other is a plain factor, between two others it is looked up each time.
    public static Mass Mass(StatedValue stated) => Read<Mass>(stated, "1/8 oz", (number, unit) => unit switch
    {
        "g" => UnitsNet.Mass.FromGrams(number),
        "kg" => UnitsNet.Mass.FromKilograms(number),
        "oz" => UnitsNet.Mass.FromOunces(number),
        "lb" => UnitsNet.Mass.FromPounds(number),
        _ => null,
    }).ToUnit(MassUnit.Kilogram);

    public static Area Area(StatedValue stated) => Read<Area>(stated, "4 m2", (number, unit) => unit switch
    {
        "m2" => UnitsNet.Area.FromSquareMeters(number),
        "ft2" => UnitsNet.Area.FromSquareFeet(number),
        _ => null,
    });

    public static Power Heat(StatedValue stated) => Read<Power>(stated, "9000 BTU/h", (number, unit) => unit switch
    {
        "W" => Power.FromWatts(number),
        "kW" => Power.FromKilowatts(number),
        "BTU/h" => Power.FromBritishThermalUnitsPerHour(number),
        _ => null,
    });

    public static Duration Minutes(StatedValue stated) =>
        Read<Duration>(stated, "10 min", (number, unit) => unit == "min" ? Duration.FromMinutes(number) : null);

    /// <summary>A line's test or a rated strength: a force, but every label states it as a weight.</summary>
    public static Force Test(StatedValue stated) => Read<Force>(stated, "10 lb", (number, unit) => unit switch
    {
        "lb" => Force.FromPoundsForce(number),
        "kg" => Force.FromKilogramsForce(number),
        "N" => Force.FromNewtons(number),
        _ => null,
    });

    public static Density Density(StatedValue stated) => Read<Density>(stated, "11.34 g/cm3", (number, unit) => unit switch
    {
        "g/cm3" => UnitsNet.Density.FromGramsPerCubicCentimeter(number),
        "kg/m3" => UnitsNet.Density.FromKilogramsPerCubicMeter(number),
        _ => null,
    });

    public static Pressure Modulus(StatedValue stated) =>
        Read<Pressure>(stated, "2 GPa", (number, unit) => unit == "GPa" ? Pressure.FromGigapascals(number) : null);

    public static HookSize Hook(StatedValue stated)
    {
        var text = ValueReader.Plain(stated);
        if (HookSize.TryParse(text, out var size))
        {
            return size;
        }

        stated.Refuse($"'{text}' is no hook size; write it as text, such as \"6\" or \"2/0\".");
        return default;
    }

    private static T Read<T>(StatedValue stated, string example, Func<double, string, T?> from)
        where T : struct
    {
        var text = ValueReader.Plain(stated);
        var space = text.LastIndexOf(' ');
        if (space > 0 && Number(text[..space]) is { } number && from(number, text[(space + 1)..]) is { } quantity)
        {
            return quantity;
        }

        stated.Refuse($"'{text}' can't be read; write a number and a unit, such as \"{example}\".");
        return default;
    }

    private static double? Number(string text)
    {
        var parts = text.Split('/');
        if (!double.TryParse(parts[0], Plain, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return null;
        }

        return parts switch
        {
            [_] => number,
            [_, var below] when int.TryParse(below, CultureInfo.InvariantCulture, out var divisor) && divisor > 0 =>
                number / divisor,
            _ => null,
        };
    }
}
