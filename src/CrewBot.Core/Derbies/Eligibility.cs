using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies;

/// <summary>Asks of an entry whether it counts.</summary>
internal static class Eligibility
{
    /// <summary>The first reason that takes an entry out; null when it counts as far as the rules of entry go.</summary>
    public static OutReason? WhyOut(EntryState entry, ExactLength scored, DerbySettings settings, bool isVoid, bool hasLeft) =>
        entry.IsWithdrawn ? OutReason.Withdrawn
        : isVoid ? OutReason.Void
        : hasLeft ? OutReason.AnglerLeft
        : !settings.Window.Holds(entry.CaughtAt) ? OutReason.OutsideWindow
        : entry.ReceivedAt > settings.Window.LastWord && entry.Accepted is null ? OutReason.Late
        : entry.IsDisputed ? OutReason.Disputed
        : entry.Accepted == false ? OutReason.Refused
        : entry.Accepted is null && !entry.IsProven(settings.Evidence) ? OutReason.Waiting
        : OutOfLimits(entry, scored, settings.Limits);

    private static OutReason? OutOfLimits(EntryState entry, ExactLength scored, EntryLimits limits) =>
        limits.Species.Count > 0 && !limits.Species.Contains(entry.Species) ? OutReason.OtherSpecies
        : limits.Waters.Count > 0 && (entry.Water is null || !limits.Waters.Contains(entry.Water)) ? OutReason.OtherWater
        : limits.Kept is { } kept && entry.Kept != kept ? OutReason.OtherFate
        : limits.Minimum is { } least && scored.Nanometres < least.Nanometres ? OutReason.TooShort
        : null;
}
