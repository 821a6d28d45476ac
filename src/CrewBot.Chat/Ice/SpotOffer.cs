using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Offers the spots that the crew has where a question names one that it has not: a slip of a key must not pass for a place nobody measured.</summary>
internal static class SpotOffer
{
    private const int NewestReports = 40;
    private const int NearestShown = 3;

    /// <summary>"'nroth bay' is no spot that this crew knows on Loon Basin. Nearest: north bay."; none where it is one, or nothing is near.</summary>
    public static async Task<IReadOnlyList<string>> ForAsync(CrewSession session, string water, string? spot)
    {
        if (spot is null || (await new WaterRepository(session).AllAsync()).FirstOrDefault(one => one.Name == water) is not { } known)
        {
            return [];
        }

        var reported = (await new IceReportRepository(session).NewestAsync(known.Id, NewestReports)).Select(filed => filed.Entry.Spot).OfType<string>();
        var spots = known.Spots.Select(one => one.Name).Concat(reported).DistinctBy(SpotName.Plain).ToList();
        return !spots.Any(one => SpotName.AreSame(one, spot)) && Nearest.Offer(spot, spots, NearestShown, "") is { Length: > 0 } near
            ? [$"{Quoting.Quote(spot)} is no spot that this crew knows on {water}. {near}"]
            : [];
    }
}
