namespace CrewBot.Core.Effort;

/// <summary>Cuts time at the bounds of the parts of a day.</summary>
public static class DayParts
{
    private static readonly (int From, DayPart Part)[] Starts =
    [
        (22, DayPart.Night), (18, DayPart.Evening), (14, DayPart.Afternoon), (10, DayPart.Midday), (6, DayPart.Morning), (0, DayPart.Night),
    ];

    /// <summary>The part that a time of day belongs to; a bound belongs to the part that it starts.</summary>
    public static DayPart Of(DateTimeOffset time) => Starts.First(start => time.Hour >= start.From).Part;

    /// <summary>Cuts a span of time, by the clock of its start, into its parts of the day.</summary>
    /// <param name="from">The start.</param>
    /// <param name="to">The end; not before the start.</param>
    /// <returns>Each piece with its length; together they are the span, to the tick.</returns>
    public static IEnumerable<(DayPart Part, TimeSpan Length)> Cut(DateTimeOffset from, DateTimeOffset to)
    {
        for (var at = from; at < to;)
        {
            var next = NextBound(at);
            var end = next < to ? next : to;
            yield return (Of(at), end - at);
            at = end;
        }
    }

    private static DateTimeOffset NextBound(DateTimeOffset at)
    {
        var day = new DateTimeOffset(at.Date, at.Offset);
        var later = Starts.Where(start => start.From > at.Hour).Select(start => start.From).DefaultIfEmpty(24).Min();
        return day.AddHours(later);
    }
}
