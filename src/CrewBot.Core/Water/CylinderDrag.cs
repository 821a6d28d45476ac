namespace CrewBot.Core.Water;

/// <summary>Drag of a long smooth cylinder across the flow.</summary>
/// <remarks>
/// Source: Cheng (2013), Journal of Hydraulic Engineering 139(6), fit below the drag crisis:
/// Cn = 11 Re^-0.75 + 0.9 (1 − exp(−1000/Re)) + 1.2 (1 − exp(−(Re/4500)^0.7)). Braided, rough or humming line runs
/// higher.
/// </remarks>
public static class CylinderDrag
{
    /// <summary>The greatest Reynolds number that the fit covers.</summary>
    public const double MaxReynolds = 2e5;

    /// <summary>Computes the drag coefficient, referred to diameter times length.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, above 0 and at most 2·10⁵.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reynolds"/> lies outside that range.</exception>
    public static double CoefficientAt(double reynolds)
    {
        ValidRange.Positive(reynolds, MaxReynolds, "(Reynolds number)", nameof(reynolds));
        return (11 * Math.Pow(reynolds, -0.75))
            + (0.9 * (1 - Math.Exp(-1000 / reynolds)))
            + (1.2 * (1 - Math.Exp(-Math.Pow(reynolds / 4500, 0.7))));
    }
}
