namespace CrewBot.Core.Ice;

/// <summary>Whether two names mean one spot.</summary>
public static class SpotName
{
    private static readonly HashSet<string> Small =
        ["the", "a", "an", "at", "off", "of", "by", "near", "in", "on", "to", "from", "out", "over", "around", "along", "up", "down", "just"];

    /// <summary>The words that tell a spot from others, in lower case: "off the Main Landing" is "main landing".</summary>
    public static string Plain(string name) => string.Join(' ', WordsOf(name));

    /// <summary>Whether what was measured at one was measured at the other.</summary>
    public static bool AreSame(string one, string other) => Plain(one) is { Length: > 0 } plain && plain == Plain(other);

    /// <summary>Whether bad news about one may be about the other: every word of one is in the other.</summary>
    public static bool MayBeSame(string one, string other)
    {
        var (first, second) = (WordsOf(one).ToHashSet(), WordsOf(other).ToHashSet());
        return first.IsSubsetOf(second) || second.IsSubsetOf(first);
    }

    private static IEnumerable<string> WordsOf(string name) => name.ToLowerInvariant()
        .Split([' ', '-', ',', '.', '\'', '’', '/', '(', ')', '"'], StringSplitOptions.RemoveEmptyEntries)
        .Where(word => !Small.Contains(word));
}
