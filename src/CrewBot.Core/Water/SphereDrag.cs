namespace CrewBot.Core.Water;

/// <summary>Drag of a smooth sphere, from creeping flow up to the drag crisis.</summary>
/// <remarks>
/// Source: Clift and Gauvin (1971), Cd = (24/Re)(1 + 0.152 Re^0.677) + 0.417/(1 + 5070 Re^-0.94), for Re up to 2·10⁵.
/// Measured spheres lie within 3–7 % at Re 10–300 and a few per cent above.
/// </remarks>
public static class SphereDrag
{
    /// <summary>The greatest Reynolds number that the correlation covers.</summary>
    public const double MaxReynolds = 2e5;

    /// <summary>Computes the drag coefficient, referred to the frontal area.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, above 0 and at most 2·10⁵.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reynolds"/> lies outside that range.</exception>
    public static double CoefficientAt(double reynolds)
    {
        ValidRange.Positive(reynolds, MaxReynolds, "(Reynolds number)", nameof(reynolds));
        return DragNumberAt(reynolds, out _) / (reynolds * reynolds);
    }

    /// <summary>
    /// Computes Cd·Re² and its slope against Re. The drag force is (π/8)·ρ·ν² times this number, so unlike Cd it
    /// stays finite, and rises steadily, from rest onward.
    /// </summary>
    internal static double DragNumberAt(double reynolds, out double slope) =>
        DragNumberAt(reynolds, Math.Log(reynolds), out slope);

    /// <summary>The same where the logarithm of the Reynolds number is known already.</summary>
    internal static double DragNumberAt(double reynolds, double log, out double slope)
    {
        var viscous = 0.152 * Math.Exp(0.677 * log);
        var lag = 5070 * Math.Exp(-0.94 * log);
        var inertial = 0.417 * reynolds / (1 + lag);

        slope = (24 * (1 + (1.677 * viscous))) + (inertial * (2 + (0.94 * lag / (1 + lag))));
        return reynolds * ((24 * (1 + viscous)) + inertial);
    }
}
