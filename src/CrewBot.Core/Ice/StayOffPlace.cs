namespace CrewBot.Core.Ice;

/// <summary>
/// Finds in a name the places for which no number is ever given: agencies name them all as weak, and no table is for them.
/// </summary>
public static class StayOffPlace
{
    private static readonly HashSet<string> OfSpots =
    [
        "inlet", "inlets", "outlet", "outlets", "narrows", "spring", "springs", "ridge", "ridges", "bridge", "bridges", "culvert",
        "culverts", "dam", "spillway", "current", "channel", "aerator", "bubbler", "mouth", "heave",
    ];

    private static readonly HashSet<string> OfBoth =
    [
        "river", "rivers", "creek", "creeks", "stream", "brook", "canal", "reservoir", "flowage", "impoundment", "sea", "harbor",
        "harbour", "fjord", "lagoon", "estuary", "tidal",
    ];

    /// <summary>The word that rules a number out; null when none does.</summary>
    /// <param name="water">Name of the water: only what kind of water it is counts, for a Spring Lake has no more springs than another.</param>
    /// <param name="spot">Name of the spot; null when nobody said.</param>
    public static string? In(string water, string? spot) =>
        WordsOf(water).FirstOrDefault(OfBoth.Contains)
        ?? WordsOf(spot ?? "").FirstOrDefault(word => OfSpots.Contains(word) || OfBoth.Contains(word));

    private static string[] WordsOf(string name) => name.ToLowerInvariant()
        .Split([' ', '-', ',', '.', '\'', '’', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
}
