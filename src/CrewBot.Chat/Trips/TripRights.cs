using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Who may change or cancel a trip.</summary>
internal static class TripRights
{
    public static string? RefusalOf(TripScene scene, CrewMember member, Request request) =>
        scene.Trip.PlannedBy == member.Id || request.Caller.Role >= Role.Steward
            ? null
            : $"Trip {scene.Trip.Number} is {scene.NameOf(scene.Trip.PlannedBy)}'s: only they or a steward can change it.";
}
