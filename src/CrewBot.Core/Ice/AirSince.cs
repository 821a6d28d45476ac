using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What is known of the air since ice was measured. What is not known counts as a thaw.</summary>
/// <param name="WarmestOfDay">The warmest of the last 24 hours; null when nobody said.</param>
/// <param name="FreezingSince">Since when it has been below freezing without a break; null when nobody said.</param>
/// <param name="AtPresent">The air now; null when nobody said.</param>
public sealed record AirSince(Temperature? WarmestOfDay, DateTimeOffset? FreezingSince, Temperature? AtPresent = null)
{
    private static readonly TimeSpan Day = TimeSpan.FromHours(24);

    // Gold names a sharp drop as a cause of failures; the figure is from memory of other guides.
    private const double SuddenDrop = 20;

    public static AirSince Unknown { get; } = new(null, null);

    public bool IsKnown => WarmestOfDay is not null || FreezingSince is not null;

    /// <summary>Whether the air has fallen by about 20 °C within the day, which cracks ice.</summary>
    public bool FellSuddenly =>
        WarmestOfDay is { } warmest && AtPresent is { } present && warmest.DegreesCelsius - present.DegreesCelsius >= SuddenDrop;

    private bool WasBelow => WarmestOfDay is { } warmest && warmest.DegreesCelsius < 0 && !ThawsNow;

    private bool ThawsNow => AtPresent is { } present && present.DegreesCelsius >= 0;

    /// <summary>Whether it stayed below 0 °C from an instant until now.</summary>
    public bool FrozenThroughout(DateTimeOffset from, DateTimeOffset now) =>
        (WasBelow && from >= now - Day) || ColdFor(now) is { } cold && from >= now - cold;

    /// <summary>The most of the last 24 hours that may have been at or above 0 °C: all that is not known to have been below.</summary>
    public TimeSpan AboveFreezing(DateTimeOffset now)
    {
        if (WasBelow)
        {
            return TimeSpan.Zero;
        }

        var cold = ColdFor(now) ?? TimeSpan.Zero;
        return cold < Day ? Day - cold : TimeSpan.Zero;
    }

    // A warm hour within a day that is said to have been cold throughout: the two contradict, and the worse counts.
    private TimeSpan? ColdFor(DateTimeOffset now) =>
        FreezingSince is not { } since || since > now || ThawsNow ? null
        : WarmestOfDay is { } warmest && warmest.DegreesCelsius >= 0 && now - since >= Day ? null
        : now - since;
}
