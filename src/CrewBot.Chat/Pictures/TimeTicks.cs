using System.Globalization;
using CrewBot.Core.Pictures;

namespace CrewBot.Chat.Pictures;

/// <summary>Marks an axis of time at round hours or days of the crew's clock.</summary>
internal static class TimeTicks
{
    private const int Most = 5;

    private static readonly TimeSpan[] Steps =
    [
        TimeSpan.FromMinutes(15), TimeSpan.FromMinutes(30), TimeSpan.FromHours(1), TimeSpan.FromHours(2), TimeSpan.FromHours(4),
        TimeSpan.FromHours(12), TimeSpan.FromDays(1), TimeSpan.FromDays(2), TimeSpan.FromDays(7), TimeSpan.FromDays(14), TimeSpan.FromDays(28),
    ];

    /// <summary>The axis between two instants.</summary>
    public static TimeAxis Axis(DateTimeOffset from, DateTimeOffset to, TimeZoneInfo zone)
    {
        var step = Steps.FirstOrDefault(step => (to - from) / step < Most, Steps[^1] * Math.Max(1, Math.Ceiling((to - from) / Steps[^1] / Most)));
        var start = TimeZoneInfo.ConvertTime(from, zone);
        var into = start.TimeOfDay.Ticks % Math.Min(step.Ticks, TimeSpan.TicksPerDay);
        var first = into == 0 ? start : start.AddTicks(Math.Min(step.Ticks, TimeSpan.TicksPerDay) - into);
        var ticks = new List<TimeTick>();
        for (var at = first; at <= to; at += step)
        {
            ticks.Add(new TimeTick(at, at.ToString(step < TimeSpan.FromDays(1) ? "H:mm" : "d MMM", CultureInfo.InvariantCulture)));
        }

        return new TimeAxis(from, to, ticks);
    }
}
