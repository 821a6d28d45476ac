using CrewBot.Core.Knowledge;
using MathNet.Numerics.Distributions;

namespace CrewBot.Core.Rigs;

/// <summary>What a knot leaves of a line as one crew ties it, once enough of its own have parted.</summary>
/// <remarks>
/// Conjugate normal model of the logarithm of the share (Gelman and others, Bayesian Data Analysis, section 2.5, from memory).
/// The trade's range is taken as nine knots in ten. Half of its variance is between crews and half between one crew's knots
/// (judgement), so that n break-offs of mean x̄ move the crew's own mean to (m + n x̄)/(n + 1) and leave 1/2 + 1/(2(n + 1)) of
/// the trade's variance: with none it is the trade's range, and it is never wider.
/// </remarks>
public static class KnotRange
{
    private const double Tail = 0.05;

    // What parts below that was nicked or badly closed, and says little of the knot (judgement).
    private const double LeastOfLowEnd = 0.5;

    private static readonly double Deviations = Normal.InvCDF(0, 1, 1 - Tail);

    /// <summary>Narrows the trade's range by a crew's own break-offs.</summary>
    /// <param name="trade">Shares of the label that the trade gives; its high end is never exceeded.</param>
    /// <param name="shares">
    /// Pull over label at which the crew's own parted, each above 0. What lies above the trade's range counts as its high end,
    /// what lies below half its low end as that half.
    /// </param>
    /// <returns>A range no wider, as a ratio of its ends, than the trade's.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is not above 0.</exception>
    public static Spread<double> Of(Spread<double> trade, IReadOnlyCollection<double> shares)
    {
        var (low, high) = (Math.Log(trade.Low), Math.Log(trade.High));
        var seen = shares.Sum(share => Math.Clamp(
            Math.Log(ValidRange.Positive(share, "of the label", nameof(shares))), Math.Log(trade.Low * LeastOfLowEnd), high));
        var own = shares.Count + 1;
        var mean = (((low + high) / 2) + seen) / own;
        var tradeDeviation = (high - low) / 2 / Deviations;
        var reach = Deviations * tradeDeviation * Math.Sqrt((1 + (1.0 / own)) / 2);
        return new Spread<double> { Low = Math.Exp(mean - reach), High = Math.Min(trade.High, Math.Exp(mean + reach)) };
    }
}
