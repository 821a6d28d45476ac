using CrewBot.Core.Fish;
using UnitsNet.Units;

namespace CrewBot.Storage.Catches;

/// <summary>The words by which the tables name the units that anglers use.</summary>
public static class StoredUnits
{
    private static readonly (string Word, LengthUnit Unit)[] Lengths =
    [
        ("mm", LengthUnit.Millimeter), ("cm", LengthUnit.Centimeter), ("m", LengthUnit.Meter), ("in", LengthUnit.Inch),
        ("ft", LengthUnit.Foot), ("yd", LengthUnit.Yard), ("ftm", LengthUnit.Fathom),
    ];

    private static readonly (string Word, MassUnit Unit)[] Masses =
        [("g", MassUnit.Gram), ("kg", MassUnit.Kilogram), ("oz", MassUnit.Ounce), ("lb", MassUnit.Pound)];

    public static string? WordOf(ExactLength? length) =>
        length is { } exact ? Lengths.First(pair => pair.Unit == exact.Unit).Word : null;

    public static string? WordOf(ExactMass? mass) =>
        mass is { } exact ? Masses.First(pair => pair.Unit == exact.Unit).Word : null;

    /// <summary>The unit that a word names; null when none does.</summary>
    public static LengthUnit? LengthUnitOf(string? word) => Lengths.Where(pair => pair.Word == word).Select(pair => (LengthUnit?)pair.Unit).FirstOrDefault();

    /// <summary>The unit that a word names; null when none does.</summary>
    public static MassUnit? MassUnitOf(string? word) => Masses.Where(pair => pair.Word == word).Select(pair => (MassUnit?)pair.Unit).FirstOrDefault();

    public static ExactLength? LengthOf(long? nanometres, string? word) =>
        nanometres is { } exact ? new ExactLength(exact, Lengths.First(pair => pair.Word == word).Unit) : null;

    public static ExactMass? MassOf(long? nanograms, string? word) =>
        nanograms is { } exact ? new ExactMass(exact, Masses.First(pair => pair.Word == word).Unit) : null;
}
