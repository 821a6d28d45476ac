using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Trips;

/// <summary>Reads "07:00", "tomorrow 07:00", "saturday 7:00", "2027-01-16 07:00".</summary>
public sealed class DayTimeReader : OptionReader<DayTime>
{
    private const int ShortestDay = 3;

    public override string Accepts => "a day and a time, such as tomorrow 07:00, saturday 07:00 or 2027-01-16 07:00";

    public override Reading<DayTime> Read(string text, CrewUnits units)
    {
        var words = text.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 1 or 2
            && TimeOnly.TryParseExact(words[^1], ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock)
            && (words.Length == 1 ? new DayTime(null, null, null, clock) : Day(words[0], clock)) is { } read)
        {
            return read;
        }

        return new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
    }

    private static DayTime? Day(string word, TimeOnly clock)
    {
        if (word is "today" or "tomorrow")
        {
            return new DayTime(null, null, word == "today" ? 0 : 1, clock);
        }

        if (DateOnly.TryParseExact(word, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return new DayTime(date, null, null, clock);
        }

        var weekday = Array.FindIndex(Enum.GetNames<DayOfWeek>(), name =>
            word.Length >= ShortestDay && name.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        return weekday < 0 ? null : new DayTime(null, (DayOfWeek)weekday, null, clock);
    }
}
