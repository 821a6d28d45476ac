namespace CrewBot.Core.Derbies.Scoring;

/// <summary>What parts two equal totals.</summary>
public enum TieBreak
{
    /// <summary>The longest fish outside the total, then the next; a fish that is not there counts zero.</summary>
    NextBest,

    /// <summary>The longest fish in the total, then the next.</summary>
    BigFish,

    /// <summary>Whoever reached the total first: the catch time of the last fish in it.</summary>
    Earliest,
}
