using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip cancel</c>: from then on the trip reminds and alerts nobody.</summary>
public sealed class CancelTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip cancel", "Call a trip off", "/trip cancel trip:1", [options.Trip])
    {
        AlsoSaid = ["cancel trip", "cancel the trip", "trip delete", "trip remove", "trip stop", "trip undo", "trip scrub"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(
            TripRights.RefusalOf(scene, member, request) is { } refusal ? TripChange.Refuse(refusal)
            : scene.Trip.Roster.Parties.FirstOrDefault(party => party.IsOnTheIce) is { } still
                ? TripChange.Refuse($"{scene.NameOf(still.MemberId)} is still on the ice: a trip is called off when everybody is back.")
                : TripChange.To(scene.Trip with { IsCancelled = true }, changed => TripCard.Of(changed, request))), cancellationToken);
}
