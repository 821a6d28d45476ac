using CrewBot.Chat.Commands;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip pack</c>: the pocket card that everybody gets the evening before, whenever one wants it.</summary>
public sealed class PackTrip(TripOptions options, TripDesk desk, RigPlanner planner) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip pack", "Your pocket card: what you bring, rigs, turn-back time, what to do in danger", "/trip pack trip:1", [options.Trip])
    {
        FromAnywhere = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => desk.ReadAsync(request, scene =>
        scene.Coming.FirstOrDefault(party => scene.Contacts.Members.GetValueOrDefault(party.MemberId)?.PlatformId == request.Caller.Member) is { } party
            ? WithPicture(PocketCard.Of(scene, party, request, planner), request)
            : Reply.Refuse(TripWords.NotOn(scene, request)), cancellationToken);

    private static Reply WithPicture(Reply card, Request request) => card with
    {
        Pictures = [Picture.Of("pocket-card", request, () => CardPictures.Of(card))],
    };
}
