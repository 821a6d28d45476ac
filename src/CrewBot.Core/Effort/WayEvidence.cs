namespace CrewBot.Core.Effort;

/// <summary>What is known of one way of fishing.</summary>
/// <param name="Tally">The crew's own fish and line-hours on it.</param>
/// <param name="Posterior">What is believed of its rate, the trade's view weighed in.</param>
public sealed record WayEvidence(Tally Tally, CatchPosterior Posterior)
{
    private const double Credibility = 0.95;

    /// <summary>What it is good for if it has been lucky: the low end of the 95 % credible interval.</summary>
    public CatchRate LowEnd { get; } = Posterior.Credible(Credibility).Low;

    /// <summary>
    /// The chance that it gives more than another way; null while it was fished for less than 5 line-hours, too few to say.
    /// </summary>
    public double? ChanceOver(WayEvidence other) => Certainties.HasHours(Tally) ? Posterior.ChanceOver(other.Posterior) : null;
}
