using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip late</c>: a party on the ice will be back later than it said.</summary>
public sealed class RunLate(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new("trip late", "Your party will be back later than it said", "/trip late by:+1h", [options.By, options.Trip, options.Who])
    {
        FromAnywhere = true,
        AlsoSaid = ["running late", "i'm late", "im late", "we're late", "gonna be late"],
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
        var by = request.Get(options.By);
        var back = by.Until?.From(request.At, request.Caller.Zone) ?? due + by.Longer!.Value;
        if (FaultOf(by, due, back, request) is { } fault)
        {
            return TripChange.Refuse(fault);
        }

        return TripParties.Change(scene, party with { DueBack = back }, _ => new Reply
        {
            Headline = $"{TripParties.Named(scene, party, "will be")} back by {DayTime.Say(back, request.At, request.Caller.Zone)}",
            Lines = [$"Overdue {TripRules.Grace.TotalMinutes:0} min later, unless they say /trip back or /trip late."],
            Cautions = [scene.Contacts.EmergencyLine],
            Audience = Audience.Crew,
        });
    }

    // Told too late a time, nobody would be missed before it: what can be another is asked about.
    private static string? FaultOf(Later by, DateTimeOffset due, DateTimeOffset back, Request request)
    {
        var (zone, sooner) = (request.Caller.Zone, back.AddHours(-12));
        return back <= due ? $"Back is said to be by {DayTime.Say(due, request.At, zone)} already, and {DayTime.Say(back, request.At, zone)} is no later. Say how much later, such as by:+1h, or /trip back once off the ice."
            : by.Until is { IsClockAlone: true, Clock.Hour: < 12 } && sooner > due
                ? $"{DayTime.Hour(back, zone)} is tomorrow morning: say by:{DayTime.Hour(sooner, zone)}, or by:\"tomorrow {DayTime.Hour(back, zone)}\" if you mean that."
            : back - due > TripRules.LongestDelay ? $"{DayTime.Show(back, zone)} is more than {TripRules.LongestDelay.TotalHours:0} h later: say it in steps, such as by:+24h, each when you know."
            : null;
    }
}
