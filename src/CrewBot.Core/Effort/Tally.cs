using System.Globalization;
using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>Fish and the line-hours they took.</summary>
public readonly record struct Tally
{
    /// <param name="fish">0 or more.</param>
    /// <param name="lineTime">Lines times the time they were down, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    public Tally(int fish, Duration lineTime)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fish);
        ValidRange.NotNegative(lineTime.Hours, "h", nameof(lineTime));
        Fish = fish;
        LineTime = lineTime;
    }

    public int Fish { get; }

    public Duration LineTime { get; }

    /// <summary>The number of line-hours: whole from ten, "31" or "4.5".</summary>
    public string HoursInWords => LineTime.Hours.ToString(LineTime.Hours >= 10 ? "0" : "0.0", CultureInfo.InvariantCulture);

    /// <summary>Catch per line-hour; null when no line was down.</summary>
    public CatchRate? Rate => LineTime.Hours > 0 ? new CatchRate(Fish / LineTime.Hours) : null;

    /// <summary>
    /// Sums spells, so that the rate of the whole is the ratio of means, Σ catch/Σ line-hours: the estimator for completed
    /// spells (Pollock, Jones and Brown 1994, American Fisheries Society Special Publication 25, from memory).
    /// </summary>
    public static Tally Total(IEnumerable<Tally> spells)
    {
        var (fish, hours) = (0, 0.0);
        foreach (var spell in spells)
        {
            fish += spell.Fish;
            hours += spell.LineTime.Hours;
        }

        return new Tally(fish, Duration.FromHours(hours));
    }
}
