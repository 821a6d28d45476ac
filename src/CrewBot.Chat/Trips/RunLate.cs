using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip late</c>: a party on the ice will be back later than it said.</summary>
public sealed class RunLate(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip late", "Your party will be back later than it said", "/trip late by:+1h", [options.By, options.Trip, options.Who])
    {
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeWhereOutAsync(request, (scene, member, _) => Task.FromResult(Late(request, scene, member)), cancellationToken);

    private TripChange Late(Request request, TripScene scene, CrewMember member)
    {
        if (!TripParties.TryFindOut(scene, member, request, options.Who, out var party, out var refusal))
        {
            return TripChange.Refuse(refusal);
        }

        // Who is late already counts from now.
        var due = party.DueBack!.Value > request.At ? party.DueBack.Value : request.At;
        var back = due + request.Get(options.By);
        return TripParties.Change(scene, party with { DueBack = back }, _ => new Reply
        {
            Headline = $"{TripParties.Named(scene, party, "will be")} back by {DayTime.Say(back, request.At, request.Caller.Zone)}",
            Lines = [$"Overdue {TripRules.Grace.TotalMinutes:0} min later, unless they say /trip back or /trip late."],
            Cautions = [scene.Contacts.EmergencyLine],
            Audience = Audience.Crew,
        });
    }
}
