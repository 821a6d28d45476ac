using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Catches;

/// <summary>Hears when something was in a row of words: "10 min ago", "yesterday 4pm", and "last night", which no clock can tell.</summary>
internal static partial class SpokenTime
{
    // "half an hour ago", "at 4 pm yesterday afternoon"
    private const int LongestRead = 5;

    // "a good couple of hours ago"
    private const int LongestAgo = 6;

    // "at 4 pm"
    private const int LongestClock = 3;

    private static readonly HashSet<string> Days =
    [
        "yesterday", "today", "tonight", "earlier", "overnight",
        "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
    ];

    private static readonly HashSet<string> Parts = ["morning", "afternoon", "evening", "night", "week", "weekend", "month"];

    private static readonly HashSet<string> Some = ["a", "an", "half", "few", "couple", "several", "one", "two", "three", "four", "five", "six"];

    private static readonly HashSet<string> BeforeAgo = ["of", "good", "little", "long", "bit", "while", "about", "or", "and"];

    /// <summary>How many words tell a time there, whether it can be read or not; null when they tell none.</summary>
    public static int? At(string[] said, int at, OptionReader<Moment> reader) => ReadAt(said, at, reader) ?? UnreadAt(said, at);

    /// <summary>How many words tell a time there that can be read; null when they tell none.</summary>
    public static int? ReadAt(string[] said, int at, OptionReader<Moment> reader)
    {
        for (var count = Math.Min(LongestRead, said.Length - at); count >= 1; count--)
        {
            if (reader.Read(string.Join(' ', said[at..(at + count)]), CrewUnits.Customary).Fault is null)
            {
                return count;
            }
        }

        return null;
    }

    /// <summary>
    /// How many words tell a time there that can't be read; null when they tell none. It goes on to whoever reads the option,
    /// who refuses it: left out, what was long ago would be told as just now.
    /// </summary>
    public static int? UnreadAt(string[] said, int at)
    {
        var word = said[at].ToLowerInvariant();
        if (DayAt(said, at, word) is { } day)
        {
            return day + ClockAt(said, at + day);
        }

        if (Some.Contains(word) || char.IsAsciiDigit(word[0]))
        {
            return AgoAt(said, at) ?? (Clock().IsMatch(word) ? 1 : null);
        }

        return word == "ago" ? 1 : null;
    }

    // "yesterday morning", "saturday", "last night"
    private static int? DayAt(string[] said, int at, string word)
    {
        var hasPart = at + 1 < said.Length && Parts.Contains(said[at + 1].ToLowerInvariant());
        return Days.Contains(word) ? hasPart ? 2 : 1 : hasPart && (word is "last" or "this") ? 2 : null;
    }

    // The clock belongs to the day before it: by itself it would be today's.
    private static int ClockAt(string[] said, int at)
    {
        for (var count = Math.Min(LongestClock, said.Length - at); count >= 1; count--)
        {
            var words = said[at..(at + count)].Select(word => word.ToLowerInvariant()).ToList();
            if (ClockText.EndOf(words) is ([] or ["at"], _))
            {
                return count;
            }
        }

        return 0;
    }

    private static int? AgoAt(string[] said, int at)
    {
        var ago = Array.FindIndex(said, at, Math.Min(LongestAgo, said.Length - at), word => word.Equals("ago", StringComparison.OrdinalIgnoreCase));
        return ago > at && said[(at + 1)..ago].All(TellsTime) && UnitWord.Find(NumberText.Split(said[at])?.After ?? "") is null or { Dimension: Dimension.Time }
            ? ago + 1 - at
            : null;
    }

    private static bool TellsTime(string word) =>
        Spans().IsMatch(word) || Some.Contains(word.ToLowerInvariant()) || BeforeAgo.Contains(word.ToLowerInvariant());

    [GeneratedRegex("^(?:m|min|minute|h|hr|hour|d|day|night|week|month|year)s?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Spans();

    [GeneratedRegex("^[0-9]{1,2}:[0-9]{2}")]
    private static partial Regex Clock();
}
