using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>The light of one local day: sun and civil twilight, each on its own.</summary>
/// <param name="Noon">When the sun stands highest.</param>
/// <param name="Sun">Sunrise and sunset: the upper rim at the horizon, with the usual refraction.</param>
/// <param name="Twilight">Civil dawn and dusk: the sun 6° below.</param>
/// <remarks>
/// NOAA's solar method after Meeus; 1 minute against the US Naval Observatory below 66° of latitude, about 2 minutes at 78°
/// and worse where the sun only grazes the horizon. Hills, trees and cloud end useful light earlier.
/// </remarks>
public sealed record Daylight(DateTimeOffset Noon, SunPath Sun, SunPath Twilight)
{
    private const double RimAtHorizon = 90.833;
    private const double SixBelow = 96;
    private const double Settled = 1.0 / 60;

    // The sun's path is all but the same every day, so each round moves an event far less than the one before.
    private const int MostRounds = 20;

    /// <summary>Computes for a local date, around the solar noon that falls on it.</summary>
    /// <param name="date">The local date, from 1900 to 2100.</param>
    /// <param name="latitude">From -90 to 90°, north positive.</param>
    /// <param name="longitude">From -180 to 180°, east positive.</param>
    /// <param name="offset">What the local clock is ahead of UTC that day, within 14 hours.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Daylight Of(DateOnly date, Angle latitude, Angle longitude, TimeSpan offset)
    {
        ValidRange.Closed(date.Year, 1900, 2100, "", nameof(date));
        ValidRange.Closed(offset.TotalHours, -14, 14, "h", nameof(offset));
        var north = ValidRange.Closed(latitude.Degrees, -90, 90, "°", nameof(latitude));
        var east = ValidRange.Closed(longitude.Degrees, -180, 180, "°", nameof(longitude));

        var midday = new DateTimeOffset(date, new TimeOnly(12, 0), offset).ToUniversalTime();
        var mean = MeanNoonNear(midday, east);
        var noon = mean.AddMinutes(-SunAt.Of(mean).EquationOfTime);
        return new Daylight(noon.ToOffset(offset), Path(RimAtHorizon), Path(SixBelow));

        SunPath Path(double zenith) => new(
            Passing(mean, north, zenith, -1)?.ToOffset(offset),
            Passing(mean, north, zenith, +1)?.ToOffset(offset),
            SunAt.Of(noon).CosineOfHourAngle(north, zenith) < 1);
    }

    // Noon by a mean sun: the Greenwich day is not always the local one.
    private static DateTimeOffset MeanNoonNear(DateTimeOffset midday, double east)
    {
        var mean = new DateTimeOffset(midday.Date, TimeSpan.Zero).AddMinutes(720 - (4 * east));
        return mean.AddDays(Math.Round((midday - mean).TotalDays));
    }

    // Before noon -1, after noon +1. Taken again with the sun as it stands at the event, until it moves less than a second.
    private static DateTimeOffset? Passing(DateTimeOffset mean, double north, double zenith, int side)
    {
        var at = mean;
        for (var round = 0; round < MostRounds; round++)
        {
            var sun = SunAt.Of(at);
            var cosine = sun.CosineOfHourAngle(north, zenith);
            if (cosine is > 1 or < -1)
            {
                return null;
            }

            var before = at;
            at = mean.AddMinutes((side * 4 * double.RadiansToDegrees(Math.Acos(cosine))) - sun.EquationOfTime);
            if (Math.Abs((at - before).TotalMinutes) < Settled)
            {
                break;
            }
        }

        return at;
    }
}
