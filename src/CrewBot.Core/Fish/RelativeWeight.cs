using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>How heavy a fish is for its length: Wr = 100 W/Ws, Wege and Anderson (1978), from memory.</summary>
/// <param name="Share">Weight over standard weight.</param>
public sealed record RelativeWeight(Ratio Share)
{
    private const double FairFrom = 0.75;
    private const double GoodFrom = 0.95;
    private const double FatFrom = 1.10;

    public BodyCondition Condition => Share.DecimalFractions switch
    {
        < FairFrom => BodyCondition.Lean,
        < GoodFrom => BodyCondition.Fair,
        < FatFrom => BodyCondition.Good,
        _ => BodyCondition.Fat,
    };

    /// <summary>Compares a weighed fish with its standard weight.</summary>
    /// <param name="species">The species.</param>
    /// <param name="total">Total length, above 0.</param>
    /// <param name="weight">Weight on a scale, above 0; an estimate would only say what the estimate assumed.</param>
    /// <returns>Null without a standard weight; <see cref="StandardWeight.Of(Species, Length)"/> says why.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Length or weight is not above 0.</exception>
    public static RelativeWeight? Of(Species species, Length total, Mass weight) =>
        Of(StandardWeight.Of(species, total), weight);

    /// <summary>Compares a weighed fish with its standard weight, quickly enough for every fish of a log.</summary>
    /// <inheritdoc cref="Of(Species, Length, Mass)"/>
    public static RelativeWeight? Of(Species species, ExactLength total, ExactMass weight)
    {
        var millimetres = ValidRange.Positive(total.Nanometres / 1e6, "mm", nameof(total));
        var grams = ValidRange.Positive(weight.Nanograms / 1e9, "g", nameof(weight));
        return species.StandardWeight is { } equation && total.Nanometres >= ExactLength.NanometresOf(equation.MinimumLength)
            ? new RelativeWeight(Ratio.FromDecimalFractions(grams / StandardWeight.Grams(equation, millimetres)))
            : null;
    }

    /// <summary>Compares a weighed fish with a standard weight.</summary>
    /// <param name="standard">The standard weight.</param>
    /// <param name="weight">Weight on a scale, above 0.</param>
    /// <returns>Null without a standard weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="weight"/> is not above 0.</exception>
    public static RelativeWeight? Of(StandardWeight standard, Mass weight)
    {
        var grams = ValidRange.Positive(weight.Grams, "g", nameof(weight));
        return standard.Weight is { } expected
            ? new RelativeWeight(Ratio.FromDecimalFractions(grams / expected.Grams))
            : null;
    }
}
