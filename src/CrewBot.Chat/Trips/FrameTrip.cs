using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip day</c>: light, cold and fuel of the day, and when to be off the ice.</summary>
public sealed class FrameTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip day", "The day's frame: light, wind chill by the hour, heater fuel, when to be off the ice",
        "/trip day forecast:\"07:00 -4F 10mph, 13:00 10F 15mph\"", [options.Forecast, options.Trip]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ReadAsync(request, scene => Answer(request, scene), cancellationToken);

    private Reply Answer(Request request, TripScene scene)
    {
        var (trip, zone) = (scene.Trip, request.Caller.Zone);
        var hours = request.TryGet(options.Forecast, out var points)
            ? HourlyForecast.Between(points, Clock(trip.MeetAt, zone), Clock(LastOfDay(trip.MeetAt, trip.ReturnAt, zone), zone))
            : [];
        return new Reply
        {
            Headline = $"Trip {trip.Number}: lines up {DayTime.Hour(trip.ReturnAt - TripRules.WayBack, zone)}, off the ice by {TripCard.Until(trip, zone)}",
            Lines =
            [
                Light(scene, zone),
                .. hours.Count == 0 ? ["Wind chill: give the forecast, such as forecast:\"07:00 -4F 10mph, 13:00 10F 15mph\"."] : Cold(hours, points!, request),
                Fuel(scene, request),
            ],
            Reasons =
            [
                $"Lines up {TripRules.WayBack.TotalHours:0} h before: shelter down, sled packed, the way back.",
                .. hours.Count == 0 ? [] : (string[])["Between two times of the forecast the air and the wind are taken in a straight line."],
            ],
            Cautions = hours.Select(hour => Frostbite.Of(hour.Air, hour.Wind).Soonest).Min() is { } soonest
                ? [$"Bare skin can freeze in {Math.Floor(soonest.Minutes):0} min: cover up, look at each other's faces."]
                : [],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static string Light(TripScene scene, TimeZoneInfo zone)
    {
        if (TripLight.Of(scene, scene.Trip.MeetAt, zone) is not { } light)
        {
            return $"Light: nobody said where {scene.Water} lies; the crew's owner does with /crew setup water:\"{scene.Water}\" at:\"49.9, -97.1\".";
        }

        var (up, down, dusk) = (light.Sun.Up, light.Sun.Down, light.Twilight.Down);
        var sun = up is { } rises && down is { } sets
            ? $"sun {DayTime.Hour(rises, zone)} to {DayTime.Hour(sets, zone)}"
            : light.Sun.AboveAtNoon ? "sun all day" : "no sun";
        return $"Light: {sun}{(dusk is { } dark ? $", dark from {DayTime.Hour(dark, zone)} (civil dusk)" : "")}."
            + (dusk < scene.Trip.ReturnAt ? " You come off in the dark: lights, and a way that is marked." : "");
    }

    private static IEnumerable<string> Cold(IReadOnlyList<ForecastPoint> hours, IReadOnlyCollection<ForecastPoint> points, Request request)
    {
        var isMetric = request.Units == CrewUnits.Metric;
        var felt = hours.Select(hour => (hour.Clock, Index: isMetric
            ? WindChill.Canadian(hour.Air, hour.Wind).DegreesCelsius
            : WindChill.American(hour.Air, hour.Wind).DegreesFahrenheit));
        yield return $"Wind chill, {(isMetric ? "°C" : "°F")}: {string.Join(", ", felt.Select(hour =>
            string.Create(CultureInfo.InvariantCulture, $"{hour.Clock:HH} h {WindChill.Printed(hour.Index)}")))}.";
        var (first, last) = (points.Min(point => point.Clock), points.Max(point => point.Clock));
        if (hours[0].Clock < first)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Before {first:HH:mm} nothing was given: it is taken to be as then.");
        }

        if (hours[^1].Clock > last)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"After {last:HH:mm} nothing was given: it is taken to be as then.");
        }
    }

    private static string Fuel(TripScene scene, Request request)
    {
        var heaters = scene.Brought.Where(gear => gear is { Family: GearFamily.Heater } && gear.Heat > Power.Zero).ToList();
        if (heaters.Count == 0)
        {
            return "Fuel: no heater is brought.";
        }

        var time = scene.Trip.ReturnAt - scene.Trip.MeetAt;
        var fuel = Mass.FromKilograms(heaters.Sum(heater => heater.Count * (Propane.RateFor(heater.Heat) * Duration.FromHours(time.TotalHours)).Kilograms));
        return $"Fuel: {request.Show.Fish(fuel)} of propane for {TripWords.Count(heaters.Sum(heater => heater.Count), "heater")} at full for {time.TotalHours.ToString("0.#", CultureInfo.InvariantCulture)} h; a CO alarm in every heated shelter.";
    }

    private static TimeOnly Clock(DateTimeOffset instant, TimeZoneInfo zone) => TimeOnly.FromDateTime(TimeZoneInfo.ConvertTime(instant, zone).DateTime);

    // A trip over night has the first day's hours here.
    private static DateTimeOffset LastOfDay(DateTimeOffset meet, DateTimeOffset back, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(meet, zone).Date == TimeZoneInfo.ConvertTime(back, zone).Date
            ? back
            : meet.AddHours(23 - TimeZoneInfo.ConvertTime(meet, zone).Hour);
}
