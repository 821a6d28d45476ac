using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>The light over a trip's water.</summary>
internal static class TripLight
{
    /// <summary>Sun and twilight of the day of an instant; null when nobody said where the water lies.</summary>
    public static Daylight? Of(TripScene scene, DateTimeOffset day, TimeZoneInfo zone)
    {
        if (scene.At is not { } at)
        {
            return null;
        }

        var local = TimeZoneInfo.ConvertTime(day, zone);
        return Daylight.Of(
            DateOnly.FromDateTime(local.DateTime), Angle.FromDegrees((double)at.Latitude), Angle.FromDegrees((double)at.Longitude), local.Offset);
    }
}
