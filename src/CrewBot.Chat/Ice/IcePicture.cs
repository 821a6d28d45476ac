using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>What is known of the ice of a water: a picture, never a clearance.</summary>
/// <param name="Today">What was measured within a day, newest first.</param>
/// <param name="Open">Bad news that nobody has closed, the newest of each spot.</param>
internal sealed record IcePicture(IReadOnlyList<FiledIce> Today, IReadOnlyList<FiledIce> Open)
{
    /// <summary>Reads it.</summary>
    public static async Task<IcePicture> ReadAsync(CrewSession session, long waterId, DateTimeOffset now)
    {
        var reports = new IceReportRepository(session);
        return new(
            await reports.SinceAsync(waterId, now - CombinedReports.Fresh), await reports.OpenAsync(waterId, IceSeason.StartOf(now)));
    }

    /// <summary>The measurement or sight that is newest; null when there is none of today.</summary>
    public FiledIce? Newest => Today.Count > 0 ? Today[0] : null;

    /// <summary>What it comes to at one named spot: the minimum, the spread, what blocks it or why there is no figure.</summary>
    public IceStanding At(string? spot, AirSince air, DateTimeOffset now) => CombinedReports.At(
        [.. Today.Concat(Open).DistinctBy(filed => filed.Number).Select(filed => filed.ToReport())], spot, air, now);
}
