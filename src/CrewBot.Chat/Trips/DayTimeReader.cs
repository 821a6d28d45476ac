using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Trips;

/// <summary>Reads "07:00", "tomorrow 7am", "saturday 7:00", "2027-01-16 07:00", "noon", "in 2 hours". Of a bare "4" it asks which.</summary>
public sealed class DayTimeReader : OptionReader<DayTime>
{
    private const int ShortestDay = 3;
    private const int HalfDay = 12;

    /// <summary>Whether how long it is until then can be given too: "2 hours".</summary>
    public bool TakesSpans { get; init; }

    public override string Accepts => TakesSpans
        ? "a time, such as 16:00, tomorrow 02:00, or how long it is until then, such as 2 hours"
        : "a day and a time, such as tomorrow 07:00, saturday 07:00 or 2027-01-16 07:00";

    public override Reading<DayTime> Read(string text, CrewUnits units)
    {
        var words = text.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (SpanOf(words) is { } ahead)
        {
            return new DayTime(null, null, null, default) { Ahead = ahead };
        }

        words = [.. words.Select(word => word == "noon" ? "12:00" : word)];
        if (words is [.. var before, var last] && int.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out var hour))
        {
            if (hour is >= 1 and <= HalfDay)
            {
                return new Misread(EitherOf(text, before, hour));
            }

            words = hour < 2 * HalfDay ? [.. before, $"{hour}:00"] : words;
        }

        var read = ClockText.EndOf(words) switch
        {
            ([], var clock) => new DayTime(null, null, null, clock),
            ([var day], var clock) => Day(day, clock),
            _ => null,
        };
        return read is null ? new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.") : read;
    }

    // "2 hours" alone is how long from now only where nothing else lasts.
    private TimeSpan? SpanOf(string[] words) => words is ["in", .. var said] ? SpanText.Read(string.Join(' ', said))
        : TakesSpans ? SpanText.Read(string.Join(' ', words))
        : null;

    private static string EitherOf(string text, string[] before, int hour)
    {
        string At(int clock) => string.Join(' ', before.Append(string.Create(CultureInfo.InvariantCulture, $"{clock:00}:00")));
        return $"{Quoting.Quote(text)} can be {At(hour)} or {At((hour + HalfDay) % (2 * HalfDay))}: give the one you mean.";
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
