using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace CrewBot.Core.Effort;

/// <summary>What is believed of a catch rate once the crew's own fishing is weighed against what was expected.</summary>
/// <remarks>
/// Gamma–Poisson conjugate (Gelman and others, Bayesian Data Analysis, section 2.6, from memory): a prior of mean m and
/// weight w line-hours is Gamma(shape m w, rate w); x fish in h line-hours make it Gamma(m w + x, w + h).
/// </remarks>
public sealed record CatchPosterior
{
    private CatchPosterior(double shape, double lineHours)
    {
        Shape = shape;
        LineHours = lineHours;
    }

    /// <summary>Fish, those of the prior included.</summary>
    public double Shape { get; }

    /// <summary>Line-hours, those of the prior included.</summary>
    public double LineHours { get; }

    /// <summary>The posterior mean, which lies between the prior's and the crew's own rate.</summary>
    public CatchRate Mean => new(Shape / LineHours);

    /// <summary>Weighs a crew's own fishing against what was expected.</summary>
    /// <param name="prior">What was expected.</param>
    /// <param name="tally">The crew's fish and line-hours.</param>
    /// <param name="bunching">How bunched the fish came, 1 or more: fish and hours are divided by it, their rate stays.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bunching"/> is below 1.</exception>
    public static CatchPosterior Of(CatchPrior prior, Tally tally, double bunching = 1)
    {
        ValidRange.Closed(bunching, 1, double.MaxValue, "", nameof(bunching));
        return new CatchPosterior(
            (prior.Mean.PerLineHour * prior.Weight.Hours) + (tally.Fish / bunching),
            prior.Weight.Hours + (tally.LineTime.Hours / bunching));
    }

    /// <summary>Gives the central credible interval.</summary>
    /// <param name="probability">Above 0 and below 1, such as 0.95.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="probability"/> lies outside its range.</exception>
    public RateInterval Credible(double probability)
    {
        var tail = Tail.Of(probability);
        return new RateInterval(Quantile(tail), Quantile(1 - tail));
    }

    /// <summary>Gives the probability that this rate exceeds another one, held independently.</summary>
    /// <returns>0 to 1; 0.5 when the two are the same.</returns>
    /// <remarks>
    /// With Y ~ Gamma(shape, 1), Y₂/(Y₁ + Y₂) is Beta(shape₂, shape₁), so that it is the regularised incomplete beta
    /// function I(rate₂/(rate₁ + rate₂); shape₂, shape₁).
    /// </remarks>
    public double ChanceOver(CatchPosterior other) =>
        SpecialFunctions.BetaRegularized(other.Shape, Shape, other.LineHours / (LineHours + other.LineHours));

    private CatchRate Quantile(double probability) => new(Gamma.InvCDF(Shape, LineHours, probability));
}
