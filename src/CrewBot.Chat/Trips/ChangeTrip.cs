using CrewBot.Chat.Commands;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip change</c>: for who planned it and for stewards.</summary>
public sealed class ChangeTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip change", "Change a trip's water, times, place, species or note", "/trip change meet:\"saturday 08:00\"",
        [options.Trip, options.NewWater, options.NewMeet, options.Return, options.Place, options.Species, options.Depth, options.Note])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeAsync(request, (scene, member, session) => ChangeAsync(request, scene, member, session), cancellationToken);

    private async Task<TripChange> ChangeAsync(Request request, TripScene scene, CrewMember member, CrewSession session)
    {
        var trip = scene.Trip;
        if (TripRights.RefusalOf(scene, member, request) is { } refusal)
        {
            return TripChange.Refuse(refusal);
        }

        var zone = request.Caller.Zone;
        var meet = request.TryGet(options.NewMeet, out var when) ? when.From(request.At, zone) : trip.MeetAt;
        var back = request.TryGet(options.Return, out var until) ? until.From(request.At, zone, sameDay: meet) : trip.ReturnAt + (meet - trip.MeetAt);
        if ((meet != trip.MeetAt || back != trip.ReturnAt) && TripTimes.FaultOf(meet, back, request) is { } fault)
        {
            return TripChange.Refuse(fault);
        }

        var waters = new WaterRepository(session);
        return TripChange.To(
            trip with
            {
                WaterId = request.TryGet(options.NewWater, out var water) ? await waters.FindAsync(water.Name) ?? await waters.AddAsync(water.Name) : trip.WaterId,
                MeetAt = meet,
                ReturnAt = back,
                Place = request.GetOr(options.Place, trip.Place!),
                Species = request.TryGet(options.Species, out var species) ? species.Key : trip.Species,
                Depth = request.TryGet(options.Depth, out var depth) ? depth : trip.Depth,
                Note = request.GetOr(options.Note, trip.Note!),
            },
            changed => TripCard.Of(changed, request));
    }
}
