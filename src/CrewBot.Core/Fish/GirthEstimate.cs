using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>Girth of a fish from its length and weight.</summary>
public static class GirthEstimate
{
    /// <summary>The divisor of the usual rule, in inches and pounds; other body shapes have others.</summary>
    public const double UsualDivisor = 800;

    internal const double LeastDivisor = 500;
    internal const double GreatestDivisor = 1200;

    /// <summary>Solves W = L G²/divisor, in inches and pounds, for the girth G.</summary>
    /// <param name="length">Total length, above 0.</param>
    /// <param name="weight">Weight, above 0.</param>
    /// <param name="divisor">From 500 to 1200; the usual 800 has been found high for trophy muskellunge.</param>
    /// <remarks>Common practice, rough.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Length FromLengthAndWeight(Length length, Mass weight, double divisor = UsualDivisor)
    {
        ValidRange.Positive(length.Inches, "in", nameof(length));
        ValidRange.Positive(weight.Pounds, "lb", nameof(weight));
        ValidRange.Closed(divisor, LeastDivisor, GreatestDivisor, "in³/lb", nameof(divisor));
        return Length.FromInches(Math.Sqrt(divisor * weight.Pounds / length.Inches));
    }
}
