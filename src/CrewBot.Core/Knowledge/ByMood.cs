namespace CrewBot.Core.Knowledge;

/// <summary>One value for each mood of fish.</summary>
/// <typeparam name="T">What differs with the mood.</typeparam>
public sealed record ByMood<T>
{
    public required T Negative { get; init; }

    public required T Neutral { get; init; }

    public required T Positive { get; init; }

    /// <summary>The value for one mood.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mood"/> is no mood.</exception>
    public T this[Mood mood] => mood switch
    {
        Mood.Negative => Negative,
        Mood.Neutral => Neutral,
        Mood.Positive => Positive,
        _ => throw new ArgumentOutOfRangeException(nameof(mood), mood, "Mood must be negative, neutral or positive."),
    };
}
