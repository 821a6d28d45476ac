using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>Whether a fish comes up through the hole.</summary>
/// <param name="Margin">Hole diameter less the widest part of the load; negative when it does not pass.</param>
/// <param name="FreeShare">The margin as a share of the hole's diameter.</param>
/// <remarks>
/// Geometry: a round fish is G/π across, a deep-bodied one is judged by its depth, and a hook or treble outside the
/// mouth counts with its span, for it can catch the rim. The room asked for is judgement.
/// </remarks>
public sealed record HoleFit(Length Margin, Ratio FreeShare)
{
    private const double TightBelow = 0.10;
    private const double ComfortableFrom = 0.15;

    /// <summary>Whether it passes at all: a round fish of girth G does when G is at most π D.</summary>
    public bool Passes => Margin.Meters >= 0;

    /// <summary>
    /// Whether it passes with less than a tenth of the hole to spare, for free hooks, ice lip and hand.
    /// </summary>
    public bool Tight => Passes && FreeShare.DecimalFractions < TightBelow;

    /// <summary>Whether 15 % or more of the hole stays free.</summary>
    public bool Comfortable => FreeShare.DecimalFractions >= ComfortableFrom;

    /// <summary>Compares a hole with what must pass it.</summary>
    /// <param name="hole">Diameter of the hole, above 0.</param>
    /// <param name="girth">Girth of the fish, 0 or more.</param>
    /// <param name="bodyDepth">Back to belly, 0 or more; leave it at zero for a round fish.</param>
    /// <param name="hookSpan">Widest hook or treble outside the mouth, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static HoleFit Of(Length hole, Length girth, Length bodyDepth, Length hookSpan)
    {
        var across = ValidRange.Positive(hole.Meters, "m", nameof(hole));
        var round = ValidRange.NotNegative(girth.Meters, "m", nameof(girth)) / Math.PI;
        var deep = ValidRange.NotNegative(bodyDepth.Meters, "m", nameof(bodyDepth));
        var span = ValidRange.NotNegative(hookSpan.Meters, "m", nameof(hookSpan));

        var margin = across - Math.Max(round, Math.Max(deep, span));
        return new HoleFit(Length.FromMeters(margin), Ratio.FromDecimalFractions(margin / across));
    }
}
