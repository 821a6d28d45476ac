using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Fish;

/// <summary>A length fixed once as whole nanometres, with the unit it was read in.</summary>
/// <remarks>
/// The inch is 25.4 mm by definition, so that every 1/64 in is a whole 396 875 nm and no step of a contest's grid ever
/// drifts. Compare <see cref="Nanometres"/>: two values are equal only when their units are, too.
/// </remarks>
public readonly record struct ExactLength
{
    /// <summary>The longest length held: 1000 m, deeper than any lake that freezes is fished.</summary>
    public const long MaxNanometres = 1_000_000_000_000;

    /// <param name="nanometres">From 0 to <see cref="MaxNanometres"/>.</param>
    /// <param name="unit">Millimetre, centimetre, metre, inch, foot, yard or fathom.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is none of these.</exception>
    public ExactLength(long nanometres, LengthUnit unit)
    {
        _ = NanometresIn(unit);
        if (nanometres is < 0 or > MaxNanometres)
        {
            throw new ArgumentOutOfRangeException(nameof(nanometres), nanometres, "Must be from 0 to 1000 m.");
        }

        Nanometres = nanometres;
        Unit = unit;
    }

    public long Nanometres { get; }

    /// <summary>The unit the angler used.</summary>
    public LengthUnit Unit { get; }

    /// <summary>The number in the angler's unit.</summary>
    public decimal Number => (decimal)Nanometres / NanometresIn(Unit);

    /// <summary>The table of length categories that belongs to the unit.</summary>
    public UnitFamily Family =>
        Unit is LengthUnit.Millimeter or LengthUnit.Centimeter or LengthUnit.Meter ? UnitFamily.Metric : UnitFamily.Inch;

    /// <summary>The quantity for calculations, in the angler's unit.</summary>
    public Length Length => Length.From((double)Number, Unit);

    /// <summary>Fixes a number as it was read; what falls between two nanometres goes to the nearest.</summary>
    /// <param name="number">From 0; a fraction is its quotient, 12 1/4 being <c>12 + 1m / 4</c>.</param>
    /// <param name="unit">Millimetre, centimetre, metre, inch, foot, yard or fathom.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The unit is another, or the length is not from 0 to 1000 m.
    /// </exception>
    public static ExactLength From(decimal number, LengthUnit unit)
    {
        var each = NanometresIn(unit);
        return number >= 0 && number <= (decimal)MaxNanometres / each
            ? new ExactLength((long)decimal.Round(number * each), unit)
            : throw new ArgumentOutOfRangeException(nameof(number), number, "Must be from 0 to 1000 m.");
    }

    /// <summary>
    /// Fixes a quantity in its own unit, taking its number to 15 digits, where binary fractions are decimal again.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The unit is none that <see cref="From"/> takes, or the length is not from 0 to 1000 m.
    /// </exception>
    public static ExactLength Nearest(Length length)
    {
        ValidRange.Closed(length.Meters, 0, 1000, "m", nameof(length));
        return From((decimal)length.Value, length.Unit);
    }

    /// <summary>How many whole steps of a grid fit in: the length scored in a contest that rounds down.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is zero.</exception>
    public long WholeSteps(ExactLength step) => step.Nanometres > 0
        ? Nanometres / step.Nanometres
        : throw new ArgumentOutOfRangeException(nameof(step), step, "A grid's step must be above 0.");

    /// <summary>Rounds down to a grid, in the grid's unit; a length exactly on a line stays on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is zero.</exception>
    public ExactLength FloorTo(ExactLength step) => new(WholeSteps(step) * step.Nanometres, step.Unit);

    /// <summary>The same length to the nanometre, however a calculation came by it.</summary>
    internal static double NanometresOf(Length length) => Math.Round(length.Nanometers);

    private static long NanometresIn(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimeter => 1_000_000,
        LengthUnit.Centimeter => 10_000_000,
        LengthUnit.Meter => 1_000_000_000,
        LengthUnit.Inch => 25_400_000,
        LengthUnit.Foot => 12 * 25_400_000,
        LengthUnit.Yard => 36 * 25_400_000,
        LengthUnit.Fathom => 72 * 25_400_000L,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Must be mm, cm, m, in, ft, yd or fathom."),
    };
}
