using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Posts;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Trips.Unasked;

/// <summary>The pocket card that everybody who comes gets the evening before.</summary>
internal static class PocketCards
{
    public static IEnumerable<PlannedPost> Of(TripScene scene, Request request, RigPlanner planner) => scene.Trip.IsCancelled ? [] :
        from party in scene.Coming
        where scene.Contacts.Members.GetValueOrDefault(party.MemberId)?.PlatformId is not null
        select new PlannedPost(
            string.Create(CultureInfo.InvariantCulture, $"{TripPosts.Start(scene.Trip)}pocket/{party.MemberId}/{scene.Trip.MeetAt.ToUnixTimeSeconds()}"),
            $"@{scene.Contacts.Members[party.MemberId].PlatformId}",
            PocketCard.Of(scene, party, request, planner),
            ReminderPosts.EveningBefore(scene.Trip.MeetAt, request.Caller.Zone))
        {
            // Whoever joins after that evening gets one too, and a card in a pocket is kept right until they meet.
            IsUrgent = scene.Trip.MeetAt > request.At,
            IsLive = scene.Trip.MeetAt > request.At,
        };
}
