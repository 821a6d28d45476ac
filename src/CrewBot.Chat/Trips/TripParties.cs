using CrewBot.Chat.Commands;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Changes one party of a trip.</summary>
internal static class TripParties
{
    public static TripChange Change(TripScene scene, TripParty party, Func<TripScene, Reply> answer) => TripChange.To(
        scene.Trip with
        {
            Roster = scene.Trip.Roster with
            {
                Parties = [.. scene.Trip.Roster.Parties.Select(one => one.MemberId == party.MemberId ? party : one)],
            },
        },
        answer);
}
