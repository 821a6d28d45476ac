namespace CrewBot.Core.Effort;

/// <summary>How sure it is that one way of fishing beats another. The bands are judgement.</summary>
public enum Certainty
{
    /// <summary>One of those compared has had fewer than 5 line-hours.</summary>
    TooEarly,

    /// <summary>Below 70 %.</summary>
    TooClose,

    /// <summary>From 70 % and below 85 %.</summary>
    Leaning,

    /// <summary>From 85 % and below 97 %.</summary>
    Likely,

    /// <summary>From 97 %.</summary>
    NearlyCertain,
}
