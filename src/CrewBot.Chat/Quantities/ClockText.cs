using System.Globalization;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads a time of day as people write it: "14:20", "7:30", "7am", "7:30 pm", "noon", "midnight".</summary>
internal static class ClockText
{
    private static readonly string[] Forms = ["H:mm", "HH:mm", "htt", "h:mmtt"];

    /// <summary>The time of day that words in lower case end with, and the words before it; null when they end with none.</summary>
    public static (string[] Before, TimeOnly Clock)? EndOf(IReadOnlyList<string> words)
    {
        // Of a day that is named, midnight may be either end.
        if (words is ["midnight"])
        {
            return ([], TimeOnly.MinValue);
        }

        if (words is [.., "noon"])
        {
            return ([.. words.SkipLast(1)], new TimeOnly(12, 0));
        }

        var count = words is [.., _, "am" or "pm"] ? 2 : 1;
        return TimeOnly.TryParseExact(string.Concat(words.TakeLast(count)), Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock)
            ? ([.. words.SkipLast(count)], clock)
            : null;
    }
}
