using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>What is expected before the crew has fished, and how many line-hours of its own fishing weigh as much.</summary>
public readonly record struct CatchPrior
{
    /// <param name="mean">The expected rate, above 0.</param>
    /// <param name="weight">Line-hours that it counts for, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0.</exception>
    public CatchPrior(CatchRate mean, Duration weight)
    {
        ValidRange.Positive(mean.PerLineHour, "fish per line-hour", nameof(mean));
        ValidRange.Positive(weight.Hours, "h", nameof(weight));
        Mean = mean;
        Weight = weight;
    }

    public CatchRate Mean { get; }

    public Duration Weight { get; }
}
