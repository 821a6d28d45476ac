using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Catches;

/// <summary>Reads "10 min ago", "half an hour ago", "14:20", "4pm", "noon", "this morning 9:30", "yesterday at 16:05", "2027-01-16 14:20".</summary>
public sealed partial class MomentReader : OptionReader<Moment>
{
    // What a message's own time is given as.
    private const string InstantForm = "yyyy-MM-dd't'HH:mm:ss'z'";

    /// <summary>Whether it is asked for something to come: the same is read, but what has been is no example.</summary>
    public bool IsToCome { get; init; }

    public override string Accepts => IsToCome ? "16:00, tomorrow 16:00 or 2027-01-16 16:00" : "10 min ago, 14:20, yesterday 16:05 or 2027-01-16 14:20";

    public override Reading<Moment> Read(string text, CrewUnits units)
    {
        var said = string.Join(' ', text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (ReadAgo(said) ?? ReadClock(said) ?? DayPart.Read(said) ?? ReadInstant(said)) is { } moment
            ? moment
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
    }

    private static Moment? ReadAgo(string said)
    {
        if (said is "now" or "just now")
        {
            return Moment.Now;
        }

        var match = AgoText().Match(said);
        if (!match.Success)
        {
            return null;
        }

        var number = match.Groups["number"] is { Success: true } written
            ? double.Parse(written.Value, CultureInfo.InvariantCulture)
            : match.Groups["half"].Success ? 0.5 : 1;
        var each = match.Groups["unit"].Value[0] switch
        {
            'm' => TimeSpan.FromMinutes(1),
            'h' => TimeSpan.FromHours(1),
            _ => TimeSpan.FromDays(1),
        };
        return new Moment(number * each, 0, null, default);
    }

    private static Moment? ReadClock(string said)
    {
        if (ClockText.EndOf(said.Split(' ')) is not var (before, clock))
        {
            return null;
        }

        return (before is [.., "at"] ? before[..^1] : before) switch
        {
            [] or ["today"] => new Moment(null, 0, null, clock),
            ["yesterday"] => new Moment(null, 1, null, clock),
            ["tomorrow"] => new Moment(null, -1, null, clock),
            [var date] when DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) =>
                new Moment(null, 0, day, clock),
            _ => null,
        };
    }

    private static Moment? ReadInstant(string said) =>
        DateTimeOffset.TryParseExact(said, InstantForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out var instant)
            ? new Moment(null, 0, null, default) { Instant = instant }
            : null;

    [GeneratedRegex(@"^(?:(?<number>[0-9]{1,4}(?:\.[0-9]{1,2})?)|(?<half>half )?an?) ?(?<unit>m|mins?|minutes?|h|hrs?|hours?|d|days?) ago$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex AgoText();
}
