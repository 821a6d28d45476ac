using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Fish;

/// <summary>A mass fixed once as whole nanograms, with the unit it was read in.</summary>
/// <remarks>
/// The pound is 453.59237 g by definition, so that an ounce is a whole 28 349 523 125 ng. Compare
/// <see cref="Nanograms"/>: two values are equal only when their units are, too.
/// </remarks>
public readonly record struct ExactMass
{
    /// <summary>The heaviest mass held: 1000 kg.</summary>
    public const long MaxNanograms = 1_000_000_000_000_000;

    private const long NanogramsInOunce = 28_349_523_125;

    /// <param name="nanograms">From 0 to <see cref="MaxNanograms"/>.</param>
    /// <param name="unit">Gram, kilogram, ounce or pound.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is none of these.</exception>
    public ExactMass(long nanograms, MassUnit unit)
    {
        _ = NanogramsIn(unit);
        if (nanograms is < 0 or > MaxNanograms)
        {
            throw new ArgumentOutOfRangeException(nameof(nanograms), nanograms, "Must be from 0 to 1000 kg.");
        }

        Nanograms = nanograms;
        Unit = unit;
    }

    public long Nanograms { get; }

    /// <summary>The unit the angler used.</summary>
    public MassUnit Unit { get; }

    /// <summary>The number in the angler's unit.</summary>
    public decimal Number => (decimal)Nanograms / NanogramsIn(Unit);

    /// <summary>The quantity for calculations, in the angler's unit.</summary>
    public Mass Mass => Mass.From((double)Number, Unit);

    /// <summary>Fixes a number as it was read; what falls between two nanograms goes to the nearest.</summary>
    /// <param name="number">
    /// From 0; a fraction is its quotient, 3 1/2 being <c>3 + 1m / 2</c>, and 2 lb 11 oz is 43 oz.
    /// </param>
    /// <param name="unit">Gram, kilogram, ounce or pound.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The unit is another, or the mass is not from 0 to 1000 kg.
    /// </exception>
    public static ExactMass From(decimal number, MassUnit unit)
    {
        var each = NanogramsIn(unit);
        return number >= 0 && number <= (decimal)MaxNanograms / each
            ? new ExactMass((long)decimal.Round(number * each), unit)
            : throw new ArgumentOutOfRangeException(nameof(number), number, "Must be from 0 to 1000 kg.");
    }

    /// <summary>
    /// Fixes a quantity in its own unit, taking its number to 15 digits, where binary fractions are decimal again.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The unit is none that <see cref="From"/> takes, or the mass is not from 0 to 1000 kg.
    /// </exception>
    public static ExactMass Nearest(Mass mass)
    {
        ValidRange.Closed(mass.Kilograms, 0, 1000, "kg", nameof(mass));
        return From((decimal)mass.Value, mass.Unit);
    }

    /// <summary>How many whole steps of a scale fit in.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is zero.</exception>
    public long WholeSteps(ExactMass step) => step.Nanograms > 0
        ? Nanograms / step.Nanograms
        : throw new ArgumentOutOfRangeException(nameof(step), step, "A scale's step must be above 0.");

    /// <summary>Rounds down to a scale's step, in the step's unit; a mass exactly on a step stays on it.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is zero.</exception>
    public ExactMass FloorTo(ExactMass step) => new(WholeSteps(step) * step.Nanograms, step.Unit);

    private static long NanogramsIn(MassUnit unit) => unit switch
    {
        MassUnit.Gram => 1_000_000_000,
        MassUnit.Kilogram => 1_000_000_000_000,
        MassUnit.Ounce => NanogramsInOunce,
        MassUnit.Pound => 16 * NanogramsInOunce,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Must be g, kg, oz or lb."),
    };
}
