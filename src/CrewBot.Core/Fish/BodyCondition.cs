namespace CrewBot.Core.Fish;

/// <summary>Relative weight in a word. The words and their bounds are judgement.</summary>
public enum BodyCondition
{
    /// <summary>Below 75 %.</summary>
    Lean,

    /// <summary>From 75 % and below 95 %: the everyday fish.</summary>
    Fair,

    /// <summary>From 95 % and below 110 %.</summary>
    Good,

    /// <summary>From 110 %.</summary>
    Fat,
}
