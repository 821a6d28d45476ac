using CrewBot.Chat.Commands;
using CrewBot.Core.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip load</c>: what stands on the ice when the trip gathers. It gives no thickness: that takes a measurement.</summary>
public sealed class LoadTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip load", "What stands on the ice when everybody gathers", "/trip load trip:1", [options.Trip]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => desk.ReadAsync(request, scene =>
    {
        var load = GatheredLoad.Of(scene.People, scene.Brought);
        return new Reply
        {
            Headline = $"Trip {scene.Trip.Number} gathered in one place: {request.Show.Fish(load.Total)}",
            Lines =
            [
                $"{TripWords.Count(scene.People, "people")}, dressed for the ice: {request.Show.Fish(load.People)}.",
                $"Shelters, sleds, machines and gear: {request.Show.Fish(load.Gear)}.",
                "Whether the ice carries it: no answer without a measurement of today at that very spot.",
                "Set shelters well apart, keep machines away from them, and do not crowd round one hole.",
            ],
            Figures = [TripFigures.People.Of(scene.People), TripFigures.Load.Of(load.Total)],
            Cautions =
            [
                "No ice is safe ice. Measure it yourself on the way out and where you stand; conditions differ within metres.",
                "Anything that stands longer than 2 hours, and any vehicle: ask the local authority.",
            ],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }, cancellationToken);
}
