using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip late</c>: a party on the ice will be back later than it said.</summary>
public sealed class RunLate(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip late", "Your party will be back later than it said", "/trip late by:+1h", [options.By, options.Trip])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(Late(request, scene, member)), cancellationToken);

    private TripChange Late(Request request, TripScene scene, CrewMember member)
    {
        if (scene.PartyOf(member.Id) is not { IsOnTheIce: true } party)
        {
            return TripChange.Refuse("You are not out on this trip: /trip out says that you go onto the ice.");
        }

        // Who is late already counts from now.
        var due = party.DueBack!.Value > request.At ? party.DueBack.Value : request.At;
        var back = due + request.Get(options.By);
        return TripParties.Change(scene, party with { DueBack = back }, _ => new Reply
        {
            Headline = $"{member.Name} and party ({party.People}) will be back by {DayTime.Hour(back, request.Caller.Zone)}",
            Lines = [$"Overdue {TripRules.Grace.TotalMinutes:0} min later, unless they say /trip back or /trip late."],
            Cautions = [TripWords.Emergency],
            Audience = Audience.Crew,
        });
    }
}
