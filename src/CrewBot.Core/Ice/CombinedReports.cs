using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// Combines the reports of one water for one spot: the minimum of effective thicknesses, never a mean, never the latest. More
/// reports never raise the figure, and adding a hazard never lowers the caution.
/// </summary>
/// <remarks>
/// This project's own rule; no published rule for averaging reports was found. Agencies say that ice can be 2 ft thick in one
/// place and 1 in a few yards away (Minnesota DNR), so nothing carries over from one named spot to another.
/// </remarks>
public static class CombinedReports
{
    /// <summary>A report older than this is history.</summary>
    public static TimeSpan Fresh { get; } = TimeSpan.FromHours(24);

    /// <summary>Whether a report can support an answer now, by its age alone.</summary>
    public static bool IsFresh(IceReport report, DateTimeOffset now) =>
        report.MeasuredAt is { } at && at <= now && now - at <= Fresh;

    /// <summary>Combines.</summary>
    /// <param name="reports">All of the season, of one water, withdrawn ones left out.</param>
    /// <param name="spot">The named spot asked about; null when nobody said.</param>
    /// <param name="air">What is known of the air since.</param>
    /// <param name="now">The instant of the question.</param>
    public static IceStanding At(IReadOnlyList<IceReport> reports, string? spot, AirSince air, DateTimeOffset now)
    {
        var blocking = BadNewsFor(reports, spot, now);
        if (blocking.Count > 0)
        {
            return None(blocking, WhyBlocked(blocking, now));
        }

        var today = reports.Where(report => report.CanSupport && IsHere(report, spot) && IsFresh(report, now)).ToList();
        if (today.Count == 0)
        {
            return None([], $"no measurement of today at that spot: no answer");
        }

        // One that a thaw has voided says nothing for the ice; it may still say something against it.
        return today.Any(report => Stands(report, reports, air, now))
            ? new(LeastOf(today), today, [], null)
            : air.IsKnown
                ? None([], $"it thawed, or may have, since it was measured: measure again")
                : None([], $"nobody said how warm it has been since: no answer") with { AsksAirSince = today.Max(report => report.MeasuredAt) };
    }

    // Bad news without a place may be about this one; weak ice of the last day is about the whole water.
    private static List<IceReport> BadNewsFor(IReadOnlyList<IceReport> reports, string? spot, DateTimeOffset now) =>
        [.. reports.Where(report => report.IsBadNews && !report.Closed
            && (IsWeakToday(report, now) || spot is null || report.Spot is null || SpotName.MayBeSame(report.Spot, spot)))];

    private static FormattableString WhyBlocked(List<IceReport> blocking, DateTimeOffset now) =>
        blocking.FirstOrDefault(report => IsWeakToday(report, now)) is { } weak ? WhyWeak(weak)
        : blocking[0].IsPartners ? (FormattableString)$"a partner crew has bad news that it has not closed: stay off"
        : $"#{blocking[0].Number} is bad news that nobody has closed: stay off";

    private static FormattableString WhyWeak(IceReport weak) => weak.IsPartners
        ? (FormattableString)$"a partner crew reports weak ice: stay off the whole water"
        : $"#{weak.Number} reports weak ice: stay off the whole water";

    private static bool IsWeakToday(IceReport report, DateTimeOffset now) =>
        report.IsWeakIce && now - (report.MeasuredAt ?? report.FiledAt) <= Fresh;

    private static bool IsHere(IceReport report, string? spot) =>
        spot is not null && report.Spot is not null && SpotName.AreSame(report.Spot, spot);

    private static bool Stands(IceReport report, IReadOnlyList<IceReport> reports, AirSince air, DateTimeOffset now) =>
        air.FrozenThroughout(report.MeasuredAt!.Value, now)
        && !reports.Any(later => later.Air is { } warm && warm.DegreesCelsius >= 0 && (later.MeasuredAt ?? later.FiledAt) >= report.MeasuredAt);

    private static Length LeastOf(IEnumerable<IceReport> reports) =>
        reports.SelectMany(report => report.Holes).Select(hole => hole.Effective).Min();

    private static IceStanding None(List<IceReport> blocking, FormattableString why) => new(null, [], blocking, why);
}
