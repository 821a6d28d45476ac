using System.Text.RegularExpressions;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Ice;

/// <summary>What words do in a report that somebody speaks: they part, guess, deny and place.</summary>
internal static partial class IceSpeech
{
    private static readonly HashSet<string> OfPlace = ["at", "by", "near", "off", "from", "in", "on"];

    // "on top", "on foot", "in places" name no place.
    private static readonly HashSet<string> NoPlace = ["top", "foot", "places", "spots", "average", "it", "all", "total", "me", "us"];

    private static readonly HashSet<string> EndOfPlace =
        ["and", "with", "is", "was", "are", "has", "have", "had", "got", "there", "i", "we", "about", "around", "found", "drilled", "walked", "ice", "snow"];

    private static readonly HashSet<string> Guess =
        ["maybe", "probably", "perhaps", "guess", "guessing", "guessed", "roughly", "approx", "approximately", "estimated", "eyeballed", "~"];

    private static readonly HashSet<string> Deny = ["no", "not", "without", "zero"];

    /// <summary>The words, and behind which of them a comma stands. A range of thickness counts as its lower end.</summary>
    public static (string[] Said, IReadOnlySet<int> Ends) Split(string words)
    {
        var (said, ends) = (new List<string>(), new HashSet<int>());
        foreach (Match part in Word().Matches(LengthRange.ToLower(words).Replace("~", "~ ", StringComparison.Ordinal)))
        {
            if (part.Value.Length == 1 && Marks.Contains(part.Value[0], StringComparison.Ordinal))
            {
                ends.Add(said.Count - 1);
            }
            else
            {
                said.Add(part.Value);
            }
        }

        return ([.. said], ends);
    }

    /// <summary>Whether a place may follow a word.</summary>
    public static bool IsOfPlace(string[] said, int at) =>
        OfPlace.Contains(said[at].ToLowerInvariant()) && at + 1 < said.Length && !NoPlace.Contains(said[at + 1].ToLowerInvariant());

    /// <summary>Whether a word can't be part of a place's name.</summary>
    public static bool EndsPlace(string word) => EndOfPlace.Contains(word.ToLowerInvariant());

    /// <summary>Whether a word says that nobody measured.</summary>
    public static bool Guesses(string word) => Guess.Contains(word.ToLowerInvariant());

    /// <summary>Whether a word says so in front of a number.</summary>
    public static bool MayGuess(string word) => word.ToLowerInvariant() is "about" or "around" or "like";

    public static bool Denies(string word) => Deny.Contains(word.ToLowerInvariant());

    private const string Marks = ",;!?()";

    // A comma between the digits of one metric number is a decimal one; between others it parts the holes of a walk-out.
    [GeneratedRegex(@"(?:[^\s,;!?()]|(?<=[0-9])(?<!,[0-9]+),(?=[0-9]+ ?[cm]?m\b))+|[,;!?()]")]
    private static partial Regex Word();
}
