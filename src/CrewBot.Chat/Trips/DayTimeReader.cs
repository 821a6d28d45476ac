using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Trips;

/// <summary>Reads "07:00", "tomorrow 7am", "saturday 7:00", "2027-01-16 07:00".</summary>
public sealed class DayTimeReader : OptionReader<DayTime>
{
    private const int ShortestDay = 3;

    public override string Accepts => "a day and a time, such as tomorrow 07:00, saturday 07:00 or 2027-01-16 07:00";

    public override Reading<DayTime> Read(string text, CrewUnits units)
    {
        var words = text.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        var read = ClockText.EndOf(words) switch
        {
            ([], var clock) => new DayTime(null, null, null, clock),
            ([var day], var clock) => Day(day, clock),
            _ => null,
        };
        return read is null ? new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.") : read;
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
