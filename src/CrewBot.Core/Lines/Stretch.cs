using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>How far line gives under a pull, and what is left of the rod's movement at the lure.</summary>
/// <remarks>
/// Hooke's law on the solid cross-section: dL = F L/(E A φ). Sag and water drag on the line are left out.
/// </remarks>
public static class Stretch
{
    /// <summary>Computes how much longer the line gets.</summary>
    /// <param name="line">The line.</param>
    /// <param name="pull">Pull, 0 or more.</param>
    /// <param name="length">Line between rod and lure, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    public static Length Of(ElasticLine line, Force pull, Length length)
    {
        ValidRange.NotNegative(length.Meters, "m", nameof(length));
        return Length.FromMeters(line.StrainUnder(pull).DecimalFractions * length.Meters);
    }

    /// <summary>Computes the share of a rod movement that reaches the lure while it holds against a pull.</summary>
    /// <param name="line">The line.</param>
    /// <param name="pull">Pull on the lure or hook, 0 or more.</param>
    /// <param name="length">Line between rod and lure, 0 or more.</param>
    /// <param name="movement">How far the rod tip moves, above 0.</param>
    /// <returns>From 0 (all taken up by the line) to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Ratio ShareReachingLure(ElasticLine line, Force pull, Length length, Length movement)
    {
        ValidRange.Positive(movement.Meters, "m", nameof(movement));
        return Ratio.FromDecimalFractions(Math.Max(0, 1 - (Of(line, pull, length).Meters / movement.Meters)));
    }
}
