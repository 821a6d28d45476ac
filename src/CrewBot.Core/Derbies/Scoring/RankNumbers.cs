namespace CrewBot.Core.Derbies.Scoring;

/// <summary>How places are numbered where some are level.</summary>
public enum RankNumbers
{
    /// <summary>"1224": one more than the competitors who are better.</summary>
    Standard,

    /// <summary>"1223": one more than the results that are better.</summary>
    Dense,

    /// <summary>"1334": the competitors who are level or better.</summary>
    Modified,

    /// <summary>"1 2.5 2.5 4": the places that a level group covers, shared out.</summary>
    Fractional,
}
