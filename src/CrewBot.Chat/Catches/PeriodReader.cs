using CrewBot.Chat.Commands;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>Reads a span of time, and says when it starts.</summary>
/// <param name="further">A span that only some commands take.</param>
public sealed class PeriodReader(params (string, Period)[] further) : OptionReader<Period>
{
    private readonly ChoiceReader<Period> _words = new(
        [("season", Period.Season), ("month", Period.Month), ("day", Period.Day), .. further, ("all", Period.All)]);

    public override IReadOnlyList<string> Choices => _words.Choices;

    public override string Accepts => _words.Accepts;

    public override Reading<Period> Read(string text, CrewUnits units) => _words.Read(text, units);

    /// <summary>When the day began that holds an instant, by a clock.</summary>
    public static DateTimeOffset Midnight(DateTimeOffset at, TimeZoneInfo zone)
    {
        var local = TimeZoneInfo.ConvertTime(at, zone).Date;
        return new DateTimeOffset(local, zone.GetUtcOffset(local));
    }

    /// <summary>When a span starts that holds an instant, by a clock. A trip starts when its people say so: <see cref="BoardSpan"/>.</summary>
    public static DateTimeOffset StartOf(Period period, DateTimeOffset at, TimeZoneInfo zone)
    {
        var here = TimeZoneInfo.ConvertTime(at, zone);
        DateTimeOffset First(int year, int month)
        {
            var local = new DateTime(year, month, 1);
            return new DateTimeOffset(local, zone.GetUtcOffset(local));
        }

        return period switch
        {
            Period.Season => First(Season.Of(here), Season.StartsInMonth),
            Period.Month => First(here.Year, here.Month),
            Period.Day => at.AddDays(-1),
            _ => DateTimeOffset.UnixEpoch,
        };
    }
}
