namespace CrewBot.Core.Effort;

/// <summary>One way of fishing that is compared with others: a presentation, or one in a mood, a depth, an hour.</summary>
/// <param name="Key">Names it; no two cells share one.</param>
/// <param name="Tally">The crew's fish and line-hours on it.</param>
/// <param name="Prior">What the trade expects of it.</param>
public sealed record EffortCell(string Key, Tally Tally, CatchPrior Prior)
{
    /// <summary>How bunched the fish came, 1 or more: the evidence is divided by it.</summary>
    public double Bunching { get; init; } = 1;
}
