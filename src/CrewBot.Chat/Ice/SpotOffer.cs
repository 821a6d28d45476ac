using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Offers the spots that the crew has where somebody names one that it has not: a slip of a key must not pass for another place.</summary>
internal static class SpotOffer
{
    private const int NewestReports = 40;
    private const int NearestShown = 3;

    // Of shorter names, one letter more often makes another: bay, bar.
    private const int ShortestSlip = 6;

    /// <summary>"'nroth bay' is no spot that this crew knows on Loon Basin. Nearest: north bay."; none where it is one, or nothing is near.</summary>
    public static async Task<IReadOnlyList<string>> ForAsync(CrewSession session, string water, string? spot)
    {
        if (spot is null || (await new WaterRepository(session).AllAsync()).FirstOrDefault(one => one.Name == water) is not { } known)
        {
            return [];
        }

        var spots = await KnownAsync(session, known);
        return !IsKnown(spot, spots) && Nearest.Offer(spot, spots, NearestShown, "") is { Length: > 0 } near
            ? [$"{Quoting.Quote(spot)} is no spot that this crew knows on {water}. {near}"]
            : [];
    }

    /// <summary>The spot that somebody may have meant who names a new one: one slip of a key away; null where none is.</summary>
    public static async Task<string?> SlipAsync(CrewSession session, long water, string? spot)
    {
        if (spot is null)
        {
            return null;
        }

        var spots = await KnownAsync(session, (await new WaterRepository(session).AllAsync()).First(one => one.Id == water));
        return IsKnown(spot, spots) ? null : spots.FirstOrDefault(one => IsSlip(SpotName.Plain(spot), SpotName.Plain(one)));
    }

    private static async Task<List<string>> KnownAsync(CrewSession session, Water water)
    {
        var reported = (await new IceReportRepository(session).NewestAsync(water.Id, NewestReports)).Select(filed => filed.Entry.Spot).OfType<string>();
        return [.. water.Spots.Select(one => one.Name).Concat(reported).DistinctBy(SpotName.Plain)];
    }

    private static bool IsKnown(string spot, List<string> spots) => spots.Any(one => SpotName.AreSame(one, spot));

    // "hole 1" and "hole 2" are one key apart and two places.
    private static bool IsSlip(string said, string meant) =>
        said.Length >= ShortestSlip && Nearest.IsOneSlipOff(said, meant) && said.Where(char.IsDigit).SequenceEqual(meant.Where(char.IsDigit));
}
