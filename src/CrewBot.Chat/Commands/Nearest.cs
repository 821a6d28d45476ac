using F23.StringSimilarity;

namespace CrewBot.Chat.Commands;

/// <summary>Finds what someone may have meant by a word that is not known.</summary>
public static class Nearest
{
    private static readonly Damerau Typing = new();

    /// <summary>The candidates closest to a word by typing errors, closest first.</summary>
    public static IReadOnlyList<string> To(string word, IEnumerable<string> candidates, int count) =>
    [
        .. candidates
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(candidate => (candidate, distance: DistanceOf(word, candidate)))
            .OrderBy(pair => pair.distance)
            .ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .Take(count)
            .Select(pair => pair.candidate),
    ];

    // Someone who stops half-way through a name has made no error in what is there.
    private static double DistanceOf(string word, string candidate)
    {
        var written = word.ToLowerInvariant();
        var meant = candidate.ToLowerInvariant();
        var whole = Typing.Distance(written, meant);
        return meant.StartsWith(written, StringComparison.Ordinal) ? Math.Min(whole, 0.5) : whole;
    }
}
