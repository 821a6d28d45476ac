using CrewBot.Chat.Quantities;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Thicknesses as people give them. For ice no unit is ever guessed.</summary>
internal static class IceReaders
{
    /// <summary>How thick the ice is: 0 to 2.5 m, thicker lake ice being a slip of the digit or the unit.</summary>
    public static QuantityReader<Length> Thickness { get; } = Of("an ice thickness", 2.5);

    /// <summary>How deep snow or slush lies: 0 to 3 m.</summary>
    public static QuantityReader<Length> Cover { get; } = Of("a depth of snow or slush", 3);

    /// <summary>What sleds, gear and machines weigh: 1 kg to 30 t.</summary>
    public static QuantityReader<Mass> Load { get; } = new("pounds or kilograms, such as 600lb")
    {
        Noun = "a weight",
        Dimension = Dimension.Weight,
        Of = kilograms => Mass.FromKilograms(kilograms),
        Range = (1, 30_000),
        Write = (weight, show) => show.Fish(weight),
        Bare = ("lb", "kg"),
    };

    /// <summary>How warm the air is or was: 2 degrees are a thaw in one unit and hard frost in the other.</summary>
    public static QuantityReader<Temperature> Air { get; } = new(QuantityReaders.Air.Accepts)
    {
        Noun = QuantityReaders.Air.Noun,
        Dimension = QuantityReaders.Air.Dimension,
        Of = QuantityReaders.Air.Of,
        Range = QuantityReaders.Air.Range,
        Write = QuantityReaders.Air.Write,
    };

    private static QuantityReader<Length> Of(string noun, double most) => new("inches or centimetres with the unit, such as 5in or 13cm")
    {
        Noun = noun,
        Dimension = Dimension.Length,
        Of = metres => Length.FromMeters(metres),
        Range = (0, most),
        Write = (thickness, show) => show.Gap(thickness),
    };
}
