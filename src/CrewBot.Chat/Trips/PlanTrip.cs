using CrewBot.Chat.Commands;
using CrewBot.Chat.Trips.Unasked;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip plan</c>: starts a trip, with whoever plans it on it.</summary>
public sealed class PlanTrip(TripOptions options, TripDesk desk, TripPosts posts, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip plan", "Plan a day out: only the water and when you meet", "/trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00",
        [options.Water, options.Meet, options.Return, options.Place, options.Species, options.Depth, options.Note])
    {
        AlsoSaid = ["trip new", "trip create", "trip make", "trip add", "trip start", "new trip"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => PlanAsync(request, session, member), cancellationToken);

    private async Task<Reply> PlanAsync(Request request, CrewSession session, CrewMember member)
    {
        var meet = request.Get(options.Meet).From(request.At, request.Caller.Zone);
        var isGiven = request.TryGet(options.Return, out var said);
        var back = isGiven ? said!.From(request.At, request.Caller.Zone, sameDay: meet) : meet + TripRules.UsualDay;
        if (TripTimes.FaultOf(meet, back, request) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var waters = new WaterRepository(session);
        var water = request.Get(options.Water).Name;
        var trip = new Trip(member.Id, await waters.FindAsync(water) ?? await waters.AddAsync(water), meet, back)
        {
            Place = request.GetOr(options.Place, null!),
            Species = request.GetOr(options.Species, null!)?.Key,
            Note = request.GetOr(options.Note, null!),
            Depth = request.TryGet(options.Depth, out var depth) ? depth : null,
            Room = request.Place,
            Roster = new TripRoster { Parties = [new TripParty(member.Id, TripAnswer.In, 1, 0)] },
        };
        var number = await new TripRepository(session).AddAsync(trip);
        var scene = await desk.SceneOfAsync(trip with { Number = number }, session, request.At);
        await posts.KeepAsync(session, scene, request);
        var card = TripCard.Of(scene, request);
        card = card with { Lines = [.. card.Lines, .. TripWords.UnsetClock(scene.Contacts, request)] };
        return isGiven ? card : card with { Reasons = [$"No return time was given: {TripRules.UsualDay.TotalHours:0} hours after meeting is assumed."] };
    }
}
