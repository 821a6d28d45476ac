using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Trips;

/// <summary>What must hold of a trip's times.</summary>
internal static class TripTimes
{
    /// <summary>What is wrong with them, in a line; null when nothing is.</summary>
    public static string? FaultOf(DateTimeOffset meet, DateTimeOffset back, Request request)
    {
        var zone = request.Caller.Zone;
        if (meet <= request.At)
        {
            return $"{DayTime.Show(meet, zone)} has passed: give when you meet, such as saturday 07:00.";
        }

        if (back <= meet)
        {
            return $"The return, {DayTime.Show(back, zone)}, is before you meet, {DayTime.Show(meet, zone)}: give a later one, such as return:16:00, or return:\"{TimeZoneInfo.ConvertTime(back.AddDays(1), zone):yyyy-MM-dd HH:mm}\" across midnight.";
        }

        return back - meet > TripRules.LongestTrip
            ? $"From {DayTime.Show(meet, zone)} to {DayTime.Show(back, zone)} is too long for one trip: {TripRules.LongestTrip.TotalDays:0} days at most."
            : null;
    }
}
