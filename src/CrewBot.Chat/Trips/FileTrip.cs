using System.Globalization;
using System.Text;
using CrewBot.Chat.Commands;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip calendar</c>: the trip as a file for a calendar.</summary>
public sealed class FileTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip calendar", "The trip as a file for your calendar", "/trip calendar trip:1", [options.Trip]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => desk.ReadAsync(request, scene =>
    {
        var zone = request.Caller.Zone;
        var name = string.Create(CultureInfo.InvariantCulture, $"trip-{scene.Trip.Number}.ics");
        return new Reply
        {
            Headline = $"Trip {scene.Trip.Number} for your calendar: {name}",
            Lines = [$"{scene.Water}, {DayTime.Show(scene.Trip.MeetAt, zone)} to {TripCard.Until(scene.Trip, zone)}, {zone.Id}. Fetch it again when the trip changes: it takes the place of the old one."],
            Files = [new ReplyFile(name, "text/calendar", Encoding.UTF8.GetBytes(Written(scene, request)))],
        };
    }, cancellationToken);

    private static string Written(TripScene scene, Request request)
    {
        var trip = scene.Trip;
        var zone = request.Caller.Zone;
        var calendar = new Ical.Net.Calendar { Method = "PUBLISH" };
        calendar.AddTimeZone(VTimeZone.FromDateTimeZone(zone.Id, trip.MeetAt.UtcDateTime.AddYears(-1), includeHistoricalData: false));
        calendar.Events.Add(new CalendarEvent
        {
            // The same at every fetch, so that a calendar replaces the event.
            Uid = string.Create(CultureInfo.InvariantCulture, $"trip-{trip.Number}-{request.Caller.Crew}@crewbot.invalid"),
            DtStamp = new CalDateTime(request.At.UtcDateTime, "UTC"),
            Summary = $"Ice fishing: {scene.Water}",
            Start = Local(trip.MeetAt, zone),
            End = Local(trip.ReturnAt, zone),
            Location = trip.Place ?? scene.Water,
            Description = string.Join("\n", TripCard.Of(scene, request).Lines),
            Status = trip.IsCancelled ? EventStatus.Cancelled : EventStatus.Confirmed,
        });
        return new CalendarSerializer().SerializeToString(calendar)!;
    }

    private static CalDateTime Local(DateTimeOffset instant, TimeZoneInfo zone) =>
        new(DateTime.SpecifyKind(TimeZoneInfo.ConvertTime(instant, zone).DateTime, DateTimeKind.Unspecified), zone.Id);
}
