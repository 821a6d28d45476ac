namespace CrewBot.Core.Knowledge;

/// <summary>How willing the fish are, from passive to aggressive.</summary>
public enum Mood
{
    /// <summary>They look and leave, or lie still.</summary>
    Negative,

    /// <summary>They come and inspect; some bite.</summary>
    Neutral,

    /// <summary>They chase.</summary>
    Positive,
}
