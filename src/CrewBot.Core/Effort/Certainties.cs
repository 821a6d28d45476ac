namespace CrewBot.Core.Effort;

/// <summary>Puts probabilities into words.</summary>
public static class Certainties
{
    private const double LeastLineHours = 5;
    private const double LeaningFrom = 0.70;
    private const double LikelyFrom = 0.85;
    private const double NearlyCertainFrom = 0.97;

    /// <summary>Judges a comparison.</summary>
    /// <param name="chance">Probability that the one beats the other, from 0 to 1.</param>
    /// <param name="one">Its fish and line-hours.</param>
    /// <param name="other">The other's.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="chance"/> is no probability.</exception>
    public static Certainty Of(double chance, Tally one, Tally other) =>
        !HasHours(one) || !HasHours(other)
            ? Certainty.TooEarly
            : ValidRange.Closed(chance, 0, 1, "(a probability)", nameof(chance)) switch
            {
                < LeaningFrom => Certainty.TooClose,
                < LikelyFrom => Certainty.Leaning,
                < NearlyCertainFrom => Certainty.Likely,
                _ => Certainty.NearlyCertain,
            };

    /// <summary>Whether a chance is called nearly certain.</summary>
    internal static bool IsNearlyCertain(double chance) => chance >= NearlyCertainFrom;

    /// <summary>Whether a cell was fished long enough to be compared.</summary>
    internal static bool HasHours(Tally tally) => tally.LineTime.Hours >= LeastLineHours;

    /// <summary>How a crew says it.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="certainty"/> is no certainty.</exception>
    public static string Words(this Certainty certainty) => certainty switch
    {
        Certainty.TooEarly => "too early to say",
        Certainty.TooClose => "too close to call",
        Certainty.Leaning => "leaning that way",
        Certainty.Likely => "likely",
        Certainty.NearlyCertain => "nearly certain",
        _ => throw new ArgumentOutOfRangeException(nameof(certainty), certainty, "Must be a certainty."),
    };
}
