using System.Globalization;

namespace CrewBot.Core.Effort;

/// <summary>Fish per line-hour: two lines in the water for an hour are two line-hours.</summary>
public readonly record struct CatchRate
{
    /// <param name="perLineHour">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative or not finite.</exception>
    public CatchRate(double perLineHour) =>
        PerLineHour = ValidRange.NotNegative(perLineHour, "fish per line-hour", nameof(perLineHour));

    public double PerLineHour { get; }

    /// <summary>The number with two figures, as much as a rate bears: "1.4", "0.62", "0.031".</summary>
    public override string ToString() => PerLineHour.ToString(
        PerLineHour switch { >= 10 => "0", >= 0.995 => "0.0", >= 0.0995 or 0 => "0.00", _ => "0.000" }, CultureInfo.InvariantCulture);
}
