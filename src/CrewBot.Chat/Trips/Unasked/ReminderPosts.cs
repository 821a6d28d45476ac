using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips.Unasked;

/// <summary>What the crew is reminded of: the evening before, and again shortly before they meet.</summary>
internal static class ReminderPosts
{
    public static IEnumerable<PlannedPost> Of(TripScene scene, TimeZoneInfo zone)
    {
        var trip = scene.Trip;
        if (scene.Contacts.Room is not { } room || trip.IsCancelled || scene.People == 0)
        {
            return [];
        }

        return
        [
            new PlannedPost(KeyOf(trip, "evening"), room, Body(scene, "Tomorrow", zone), EveningBefore(trip.MeetAt, zone)),
            new PlannedPost(KeyOf(trip, "soon"), room, Body(scene, $"In {TripRules.SoonBefore.TotalHours:0} hours", zone), trip.MeetAt - TripRules.SoonBefore),
        ];
    }

    /// <summary>The evening before an instant, by the crew's clock.</summary>
    public static DateTimeOffset EveningBefore(DateTimeOffset meet, TimeZoneInfo zone)
    {
        var evening = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(meet, zone).DateTime).AddDays(-1).ToDateTime(TripRules.Evening);
        return new DateTimeOffset(evening, zone.GetUtcOffset(evening));
    }

    // Met at another time, they are reminded anew.
    private static string KeyOf(Trip trip, string which) =>
        string.Create(CultureInfo.InvariantCulture, $"{TripPosts.Start(trip)}reminder/{which}/{trip.MeetAt.ToUnixTimeSeconds()}");

    private static Reply Body(TripScene scene, string when, TimeZoneInfo zone)
    {
        var trip = scene.Trip;
        var missing = TripCard.Missing(scene);
        return new Reply
        {
            Headline = $"{when}: {scene.Water}, {DayTime.Show(trip.MeetAt, zone)}{(trip.Place is { } place ? $", {place}" : "")}",
            Lines =
            [
                $"In: {TripCard.Who(scene, TripAnswer.In)}.",
                $"Off the ice by {TripCard.Until(trip, zone)}. /trip out when you go onto the ice, /trip back when you are off it.",
                .. missing.Length == 0 ? [] : (string[])[$"Missing: {missing}."],
            ],
            Actions =
            [
                new ReplyAction("What is missing", ActionKind.Run, "trip need", TripCard.Options(scene)),
                new ReplyAction("My pocket card", ActionKind.Run, "trip pack", TripCard.Options(scene)),
            ],
            Audience = Audience.Crew,
        };
    }
}
