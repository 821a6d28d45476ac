using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>What is known of the ice of a water: a picture, never a clearance.</summary>
/// <param name="Today">What was measured within a day, newest first.</param>
/// <param name="Open">Bad news that nobody has closed, the newest of each spot.</param>
internal sealed record IcePicture(IReadOnlyList<FiledIce> Today, IReadOnlyList<FiledIce> Open)
{
    /// <summary>Bad news of partner crews that stands.</summary>
    public IReadOnlyList<FiledIce> Partners { get; init; } = [];

    /// <summary>Reads it.</summary>
    public static async Task<IcePicture> ReadAsync(CrewSession session, long waterId, DateTimeOffset now)
    {
        var reports = new IceReportRepository(session);
        return new(await reports.SinceAsync(waterId, now - CombinedReports.Fresh), await reports.OpenAsync(waterId, IceSeason.StartOf(now)))
        {
            Partners = await PartnersAsync(session, waterId, now),
        };
    }

    /// <summary>What partner crews have against the ice of a water: it blocks as the crew's own bad news does, and shows as it.</summary>
    public static Task<IReadOnlyList<FiledIce>> PartnersAsync(CrewSession session, long waterId, DateTimeOffset now) =>
        new IcePartnerRepository(session).BadNewsAsync(waterId, IceSeason.StartOf(now), now - CombinedReports.Fresh);

    /// <summary>
    /// What it comes to at one spot, of a water with however many reports: read is what can matter there and nothing else. That
    /// is what was measured at the spot within a day, what stands against any part of the water, and the newest thaw.
    /// </summary>
    public static async Task<IceStanding> StandingAsync(CrewSession session, long waterId, string? spot, AirSince air, DateTimeOffset now)
    {
        var (reports, day) = (new IceReportRepository(session), now - CombinedReports.Fresh);
        var here = spot is null ? [] : await reports.AtSpotAsync(waterId, spot, day);
        var against = (await reports.OpenAsync(waterId, IceSeason.StartOf(now))).Concat(await reports.OpenSinceAsync(waterId, day));
        var own = here.Concat(against).Append(await reports.NewestWarmAsync(waterId, day)).OfType<FiledIce>().DistinctBy(filed => filed.Number)
            .OrderByDescending(filed => filed.Entry.MeasuredAt ?? filed.Entry.FiledAt).ThenByDescending(filed => filed.Number);
        return CombinedReports.At(
            [.. own.Concat(await PartnersAsync(session, waterId, now)).Select(filed => filed.ToReport())], spot, air, now);
    }

    /// <summary>The measurement or sight that is newest; null when there is none of today.</summary>
    public FiledIce? Newest => Today.Count > 0 ? Today[0] : null;

    /// <summary>What it comes to at one named spot: the minimum, the spread, what blocks it or why there is no figure.</summary>
    public IceStanding At(string? spot, AirSince air, DateTimeOffset now) => CombinedReports.At(
        [.. Today.Concat(Open).DistinctBy(filed => filed.Number).Concat(Partners).Select(filed => filed.ToReport())], spot, air, now);
}
