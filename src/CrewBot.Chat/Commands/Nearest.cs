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

    /// <summary>The candidates that someone may well have meant, closest first: at most half of the letters are wrong.</summary>
    public static IReadOnlyList<string> Near(string word, IEnumerable<string> candidates)
    {
        var near = candidates.Where(candidate => DistanceOf(word, candidate) <= word.Length / 2).ToList();
        return To(word, near, near.Count);
    }

    /// <summary>"Nearest: walleye, sauger." with those that are near; where none is, what is said otherwise.</summary>
    public static string Offer(string word, IEnumerable<string> candidates, int count, string otherwise) =>
        Near(word, candidates).Take(count).ToList() is [_, ..] near ? $"Nearest: {string.Join(", ", near)}." : otherwise;

    /// <summary>Whether one letter is wrong, missing, too many, or two have changed places.</summary>
    public static bool IsOneSlipOff(string word, string meant) =>
        Math.Abs(word.Length - meant.Length) <= 1 && Typing.Distance(word, meant) <= 1;

    /// <summary>Whether a name, or a word in it, begins so: "tr" begins trout and lake trout.</summary>
    public static bool Begins(string begun, string name) =>
        name.StartsWith(begun, StringComparison.OrdinalIgnoreCase) || name.Contains(' ' + begun, StringComparison.OrdinalIgnoreCase);

    // Someone who stops half-way through a name has made no error in what is there.
    private static double DistanceOf(string word, string candidate)
    {
        var written = word.ToLowerInvariant();
        var meant = candidate.ToLowerInvariant();
        var whole = Typing.Distance(written, meant);
        return Begins(written, meant) ? Math.Min(whole, 0.5) : whole;
    }
}
