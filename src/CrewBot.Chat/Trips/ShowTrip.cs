using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip show</c>.</summary>
public sealed class ShowTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip show", "The next trip: who comes with what, and what is missing", "/trip show trip:1", [options.Trip])
    {
        AlsoSaid = ["trip list", "trip status", "trip when", "trip who", "next trip", "who's coming", "whos coming", "who is coming"],
        FromAnywhere = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ReadAsync(request, scene => TripCard.Of(scene, request) with { Audience = Audience.Asker }, cancellationToken);
}
