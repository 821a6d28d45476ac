using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Catches;

/// <summary>A time as a person says it.</summary>
/// <param name="Ago">How long ago; null for a time by the clock.</param>
/// <param name="DaysBack">Days before today, where no date is given.</param>
/// <param name="Day">The date; null for today or <paramref name="DaysBack"/>.</param>
/// <param name="Clock">The time by the caller's clock.</param>
public sealed record Moment(TimeSpan? Ago, int DaysBack, DateOnly? Day, TimeOnly Clock)
{
    private static readonly TimeSpan HalfAYear = TimeSpan.FromDays(180);

    /// <summary>The instant at which it is said.</summary>
    public static Moment Now { get; } = new(TimeSpan.Zero, 0, null, default);

    /// <summary>The very instant, where a message or a photo says it; null where a person does.</summary>
    public DateTimeOffset? Instant { get; init; }

    /// <summary>The instant that is meant by somebody who speaks at another, by their clock.</summary>
    public DateTimeOffset From(DateTimeOffset spoken, TimeZoneInfo zone)
    {
        if (Instant is { } instant)
        {
            return TimeZoneInfo.ConvertTime(instant, zone);
        }

        var here = TimeZoneInfo.ConvertTime(spoken, zone);
        if (Ago is { } ago)
        {
            return TimeZoneInfo.ConvertTime(spoken - ago, zone);
        }

        var day = Day ?? DateOnly.FromDateTime(here.DateTime).AddDays(-DaysBack);
        var local = day.ToDateTime(Clock);
        return new DateTimeOffset(local, zone.GetUtcOffset(local));
    }

    /// <summary>How to say what somebody meant who named a time to come: past midnight, 23:50 is yesterday's.</summary>
    public static string Before(DateTimeOffset time, DateTimeOffset now) =>
        time - TimeSpan.FromDays(1) < now ? $"yesterday {time.ToString("HH:mm", CultureInfo.InvariantCulture)}" : "10 min ago";

    /// <summary>Refuses a time to come, in a line, with the clock that it was read by: it may be set to another zone.</summary>
    public static string StillToCome(DateTimeOffset time, string what, Request request)
    {
        var now = TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone);
        return $"{Show(time, request.At)} is still to come: it is {Show(now, now)} in {request.Caller.Zone.Id}. Give when {what}, such as when:\"{Before(time, now)}\".";
    }

    /// <summary>A time as it is shown: "14:20" for today, "Sat 16 Jan 14:20" for a day within half a year, else with the year.</summary>
    public static string Show(DateTimeOffset time, DateTimeOffset now) => time.ToString(
        time.Date == now.ToOffset(time.Offset).Date ? "HH:mm" : (time - now).Duration() < HalfAYear ? "ddd d MMM HH:mm" : "yyyy-MM-dd HH:mm",
        CultureInfo.InvariantCulture);
}
