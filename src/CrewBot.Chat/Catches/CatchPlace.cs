using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Where in the crew's waters a fish was caught.</summary>
/// <param name="WaterId">Number of the water; null when nobody said.</param>
/// <param name="Water">What the water is called; null when nobody said.</param>
/// <param name="SpotId">Number of the spot in it; null when nobody said.</param>
internal readonly record struct CatchPlace(long? WaterId, string? Water, long? SpotId)
{
    private const int NearestShown = 3;

    /// <summary>Finds a water, adding one that the knowledge file names, and a spot in it, which must be there.</summary>
    /// <returns>The place, or in a line why there is none.</returns>
    public static async Task<Reading<CatchPlace>> FindAsync(WaterRepository waters, string? water, string? spot)
    {
        if (water is null)
        {
            return spot is null ? new CatchPlace(null, null, null) : new Misread("A spot lies in a water: name that too.");
        }

        var (id, name) = await waters.NamedAsync(water) ?? (await waters.AddAsync(water), water);
        if (spot is null)
        {
            return new CatchPlace(id, name, null);
        }

        if (await waters.FindSpotAsync(id, spot) is { } found)
        {
            return new CatchPlace(id, name, found);
        }

        var known = (await waters.AllAsync()).First(one => one.Id == id).Spots.Select(one => one.Name).ToList();
        var offer = known.Count > 0 ? $" Nearest: {string.Join(", ", Nearest.To(spot, known, NearestShown))}." : "";
        return new Misread($"{Quoting.Quote(spot)} is no spot of {water}.{offer} Its owner adds one with /crew setup water:\"{water}\" spot:\"name\".");
    }
}
