using System.Text.RegularExpressions;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Ice;

/// <summary>What words do in a report that somebody speaks: they part, guess, deny, place and date.</summary>
internal static partial class IceSpeech
{
    private const int LongestAgo = 5;

    private static readonly HashSet<string> OfPlace = ["at", "by", "near", "off", "from", "in", "on"];

    // "on top", "on foot", "in places" name no place.
    private static readonly HashSet<string> NoPlace = ["top", "foot", "places", "spots", "average", "it", "all", "total", "me", "us"];

    private static readonly HashSet<string> EndOfPlace =
        ["and", "with", "is", "was", "are", "has", "have", "had", "got", "there", "i", "we", "about", "around", "found", "drilled", "walked", "ice", "snow"];

    private static readonly HashSet<string> Guess =
        ["maybe", "probably", "perhaps", "guess", "guessing", "guessed", "roughly", "approx", "approximately", "estimated", "eyeballed", "~"];

    private static readonly HashSet<string> Deny = ["no", "not", "without", "zero"];

    private static readonly HashSet<string> Days =
    [
        "yesterday", "today", "tonight", "earlier", "overnight", "noon", "midnight",
        "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
    ];

    private static readonly HashSet<string> Parts = ["morning", "afternoon", "evening", "night", "week", "weekend", "month"];

    private static readonly HashSet<string> Some = ["a", "an", "half", "few", "couple", "several", "one", "two", "three", "four", "five", "six"];

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

    /// <summary>How many words tell a time there, whether it can be read or not; null when they tell none.</summary>
    public static int? TimeAt(string[] said, int at, OptionReader<Moment> reader)
    {
        for (var count = Math.Min(3, said.Length - at); count >= 1; count--)
        {
            if (reader.Read(string.Join(' ', said[at..(at + count)]), CrewUnits.Customary).Fault is null)
            {
                return count;
            }
        }

        return UnreadTimeAt(said, at);
    }

    private static int? UnreadTimeAt(string[] said, int at)
    {
        string? Word(int index) => index < said.Length ? said[index].ToLowerInvariant() : null;
        var (word, next) = (Word(at)!, Word(at + 1));
        if (word is "last" or "this" && next is not null && Parts.Contains(next))
        {
            return 2;
        }

        if (Days.Contains(word))
        {
            return next is not null && Parts.Contains(next) ? 2 : 1;
        }

        if (Some.Contains(word) || char.IsAsciiDigit(word[0]))
        {
            var ago = Array.FindIndex(said, at, Math.Min(LongestAgo, said.Length - at), one => one.Equals("ago", StringComparison.OrdinalIgnoreCase));
            return ago > at && said[(at + 1)..ago].All(between => !char.IsAsciiDigit(between[0]) && UnitWord.Find(between) is null or { Dimension: Dimension.Time })
                && UnitWord.Find(NumberText.Split(word)?.After ?? "") is null or { Dimension: Dimension.Time }
                    ? ago + 1 - at
                    : Clock().IsMatch(word) ? 1 : null;
        }

        return word == "ago" ? 1 : null;
    }

    private const string Marks = ",;!?()";

    // A comma between the digits of one metric number is a decimal one; between others it parts the holes of a walk-out.
    [GeneratedRegex(@"(?:[^\s,;!?()]|(?<=[0-9])(?<!,[0-9]+),(?=[0-9]+ ?[cm]?m\b))+|[,;!?()]")]
    private static partial Regex Word();

    [GeneratedRegex("^[0-9]{1,2}:[0-9]{2}")]
    private static partial Regex Clock();
}
