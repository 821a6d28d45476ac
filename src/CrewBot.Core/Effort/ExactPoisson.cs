using MathNet.Numerics.Distributions;

namespace CrewBot.Core.Effort;

/// <summary>Exact limits for a count of rare events.</summary>
/// <remarks>
/// Garwood (1936), by chi-square quantiles: χ²(α/2; 2x)/2 and χ²(1 − α/2; 2x + 2)/2, the lower one zero for x = 0; two-sided,
/// for nothing caught as well. They presume that fish come one by one at a steady rate: schooling, and stopping at a bag
/// limit, break that, so show them as a rough guide.
/// </remarks>
public static class ExactPoisson
{
    /// <summary>Computes the limits of a count.</summary>
    /// <param name="count">0 or more.</param>
    /// <param name="confidence">Above 0 and below 1, such as 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static (double Low, double High) Limits(int count, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        var tail = Tail.Of(confidence);
        return (
            count == 0 ? 0 : ChiSquared.InvCDF(2.0 * count, tail) / 2,
            ChiSquared.InvCDF((2.0 * count) + 2, 1 - tail) / 2);
    }

    /// <summary>Computes the limits of a catch rate: those of the count over the line-hours.</summary>
    /// <param name="tally">Fish and line-hours.</param>
    /// <param name="confidence">Above 0 and below 1, such as 0.95.</param>
    /// <returns>Null when no line was down.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> lies outside its range.</exception>
    public static RateInterval? Limits(Tally tally, double confidence)
    {
        var (low, high) = Limits(tally.Fish, confidence);
        var hours = tally.LineTime.Hours;
        return hours > 0 ? new RateInterval(new CatchRate(low / hours), new CatchRate(high / hours)) : null;
    }
}
