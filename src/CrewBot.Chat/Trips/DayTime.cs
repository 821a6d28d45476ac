using System.Globalization;

namespace CrewBot.Chat.Trips;

/// <summary>A time to come, as a person says it.</summary>
/// <param name="Date">The date, if one was given.</param>
/// <param name="Weekday">The day of the week, if one was given.</param>
/// <param name="DaysAhead">0 for today, 1 for tomorrow; null when no day was said.</param>
/// <param name="Clock">The time by the crew's clock.</param>
public sealed record DayTime(DateOnly? Date, DayOfWeek? Weekday, int? DaysAhead, TimeOnly Clock)
{
    private const int Week = 7;

    /// <summary>How long from now, where that is what was said; the rest says nothing then.</summary>
    public TimeSpan? Ahead { get; init; }

    /// <summary>Whether it is a time of the clock alone.</summary>
    public bool IsClockAlone => this is { Date: null, Weekday: null, DaysAhead: null, Ahead: null };

    /// <summary>The instant that is meant. In the hour that a clock change leaves out it is as long after the change as was meant.</summary>
    /// <param name="spoken">When it was said.</param>
    /// <param name="zone">Where the crew's clock stands.</param>
    /// <param name="sameDay">The day when none was said; null for the next time the clock shows it.</param>
    public DateTimeOffset From(DateTimeOffset spoken, TimeZoneInfo zone, DateTimeOffset? sameDay = null)
    {
        var here = TimeZoneInfo.ConvertTime(spoken, zone);
        var today = DateOnly.FromDateTime(here.DateTime);
        if (Ahead is { } ahead)
        {
            return here + ahead;
        }

        if (Date is { } date)
        {
            return At(date, zone);
        }

        if (Weekday is { } weekday)
        {
            var away = ((int)weekday - (int)today.DayOfWeek + Week) % Week;
            var soon = At(today.AddDays(away), zone);
            return soon > spoken ? soon : At(today.AddDays(away + Week), zone);
        }

        if (DaysAhead is { } days)
        {
            return At(today.AddDays(days), zone);
        }

        if (sameDay is { } day)
        {
            return At(DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(day, zone).DateTime), zone);
        }

        var next = At(today, zone);
        return next > spoken ? next : At(today.AddDays(1), zone);
    }

    /// <summary>A time as it is shown on a trip card: "Sat 16 Jan 07:00".</summary>
    public static string Show(DateTimeOffset instant, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(instant, zone).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day in the crew's zone: "17:00".</summary>
    public static string Hour(DateTimeOffset instant, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(instant, zone).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time to come as it is said now: "17:00", and with its day where that is not today.</summary>
    public static string Say(DateTimeOffset instant, DateTimeOffset now, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(instant, zone).Date == TimeZoneInfo.ConvertTime(now, zone).Date ? Hour(instant, zone) : Show(instant, zone);

    private DateTimeOffset At(DateOnly day, TimeZoneInfo zone)
    {
        var local = day.ToDateTime(Clock);
        return TimeZoneInfo.ConvertTime(new DateTimeOffset(local, zone.GetUtcOffset(local)), zone);
    }
}
