namespace CrewBot.Core.Effort;

/// <summary>Fish per line-hour: two lines in the water for an hour are two line-hours.</summary>
public readonly record struct CatchRate
{
    /// <param name="perLineHour">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative or not finite.</exception>
    public CatchRate(double perLineHour) =>
        PerLineHour = ValidRange.NotNegative(perLineHour, "fish per line-hour", nameof(perLineHour));

    public double PerLineHour { get; }
}
