using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>What a board shows of a water.</summary>
/// <param name="Newest">The crew's newest reports, newest first.</param>
/// <param name="Standing">Bad news that nobody has closed, partner crews' among it: the newest of each spot, newest first.</param>
/// <param name="Closed">Bad news of the season that a steward has closed.</param>
/// <param name="Day">What the measurements of the last day come to over all spots; null when there are none that may be shown.</param>
internal sealed record IceBoard(
    IReadOnlyList<FiledIce> Newest, IReadOnlyList<FiledIce> Standing, IReadOnlyList<FiledIce> Closed, (Length Least, Length Most, Length Counts)? Day)
{
    public bool IsEmpty => Newest.Count == 0 && Standing.Count == 0;

    /// <summary>Reads it.</summary>
    /// <param name="session">The crew.</param>
    /// <param name="waterId">The water.</param>
    /// <param name="water">Its name, which may say that no number is ever given.</param>
    /// <param name="most">How many of the newest.</param>
    /// <param name="now">When it is asked for.</param>
    public static async Task<IceBoard> ReadAsync(CrewSession session, long waterId, string water, int most, DateTimeOffset now)
    {
        var (reports, season) = (new IceReportRepository(session), IceSeason.StartOf(now));
        var partners = (await IcePicture.PartnersAsync(session, waterId, now)).DistinctBy(filed => SpotName.Plain(filed.Entry.Spot ?? ""));
        var spots = (await reports.DayAsync(waterId, now - CombinedReports.Fresh)).Where(day => StayOffPlace.In(water, day.SpotPlain) is null).ToList();
        return new IceBoard(
            await reports.NewestAsync(waterId, most),
            [.. (await reports.OpenAsync(waterId, season)).Concat(partners).OrderByDescending(filed => filed.Entry.MeasuredAt ?? filed.Entry.FiledAt)],
            await reports.ClosedAsync(waterId, season),
            spots.Count > 0 ? (spots.Min(day => day.Least), spots.Max(day => day.Most), spots.Min(day => day.Counts)) : null);
    }
}
