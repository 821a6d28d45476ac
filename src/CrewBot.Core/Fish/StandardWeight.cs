using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>What a fish of a length weighs in good condition.</summary>
/// <param name="Status">Whether there is a value.</param>
/// <param name="Weight">The standard weight; null when there is none.</param>
/// <param name="WhyNot">Why there is none; null when there is one.</param>
/// <remarks>
/// Ws = 10^(a + b log₁₀ TL), TL the total length in millimetres, Ws in grams: Wege and Anderson (1978), by the
/// regression-line-percentile method of Murphy, Willis and Springer (1991), both from memory. It describes a fish near
/// the 75th percentile of populations, so an everyday fish weighs 75–95 % of it: say "about", and that it is a
/// good-condition figure.
/// </remarks>
public sealed record StandardWeight(StandardWeightStatus Status, Mass? Weight, FormattableString? WhyNot)
{
    /// <summary>Computes it by the species' own equation.</summary>
    /// <param name="species">The species; without an equation there is no value.</param>
    /// <param name="total">
    /// Total length, above 0; below the equation's minimum there is no value, at the minimum there is.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="total"/> is not above 0.</exception>
    public static StandardWeight Of(Species species, Length total)
    {
        ValidRange.Positive(total.Millimeters, "mm", nameof(total));
        return species.StandardWeight is { } equation
            ? Of(equation, total)
            : new(StandardWeightStatus.NoEquation, null, $"no standard weight for {species.Name}");
    }

    /// <summary>Computes it by an equation.</summary>
    /// <param name="equation">The equation.</param>
    /// <param name="total">
    /// Total length, above 0; below the equation's minimum there is no value, at the minimum there is.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="total"/> is not above 0.</exception>
    public static StandardWeight Of(StandardWeightEquation equation, Length total)
    {
        var millimetres = ValidRange.Positive(total.Millimeters, "mm", nameof(total));
        if (ExactLength.NanometresOf(total) < ExactLength.NanometresOf(equation.MinimumLength))
        {
            return new(
                StandardWeightStatus.BelowMinimumLength, null, $"no standard weight below {equation.MinimumLength:gap}");
        }

        return new(StandardWeightStatus.Computed, Mass.FromGrams(Grams(equation, millimetres)), null);
    }

    internal static double Grams(StandardWeightEquation equation, double millimetres) =>
        Math.Pow(10, equation.Intercept + (equation.Slope * Math.Log10(millimetres)));
}
