using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip out</c>: a party goes onto the ice.</summary>
public sealed class GoOut(TripOptions options, TripDesk desk) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "trip out", "Your party goes onto the ice", "/trip out trip:1", [options.Trip, options.DueBack, options.Spot])
    {
        AlsoSaid = ["trip go", "trip start", "trip leave"],
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(Go(request, scene, member)), cancellationToken);

    private TripChange Go(Request request, TripScene scene, CrewMember member)
    {
        if (scene.PartyOf(member.Id) is not { Answer: TripAnswer.In } party)
        {
            return TripChange.Refuse(TripWords.NotOn(scene, request));
        }

        if (party.IsOnTheIce)
        {
            return TripChange.Refuse($"You are out since {DayTime.Say(party.OutAt!.Value, request.At, request.Caller.Zone)}. /trip back when you are off the ice, /trip late if it takes longer.");
        }

        var back = request.TryGet(options.DueBack, out var said) ? said.From(request.At, request.Caller.Zone, sameDay: request.At) : scene.Trip.ReturnAt;
        if (back <= request.At)
        {
            return TripChange.Refuse($"{DayTime.Show(back, request.Caller.Zone)} has passed: give when you mean to be back, such as {Likelier(back, said, request)}");
        }

        // Who goes out days ahead would be missed no sooner than the trip's own return.
        if (!request.Has(options.DueBack) && scene.Trip.MeetAt - request.At > TripRules.EarliestOut)
        {
            return TripChange.Refuse($"Trip {scene.Trip.Number} meets {DayTime.Show(scene.Trip.MeetAt, request.Caller.Zone)}. If you go onto the ice now, say when you are back: /trip out trip:{scene.Trip.Number} back:16:00");
        }

        var missing = scene.Missing.Where(need => need.Rule.IsSafety).Select(TripCard.Missing).ToList();
        return TripParties.Change(scene, party with { OutAt = request.At, DueBack = back, BackAt = null, Spot = request.GetOr(options.Spot, null!) }, changed => new Reply
        {
            Headline = $"{TripParties.Named(changed, party)} on the ice, back by {DayTime.Say(back, request.At, request.Caller.Zone)}",
            Lines =
            [
                $"Overdue {TripRules.Grace.TotalMinutes:0} min later: {TripWords.WhoIsTold(changed.Contacts)}. /trip back ends it, /trip late by:+1h moves it.",
                .. TripWords.UnsetClock(scene.Contacts, request),
                .. missing.Count == 0 ? [] : (string[])[$"Missing on this trip: {string.Join(", ", missing)}. Turn back for what is missing and stay off without it; if somebody has it along, /trip bring says so."],
            ],
            Cautions = ["Try the ice at every step; turn back at the first doubt.", scene.Contacts.EmergencyLine],
            Audience = Audience.Crew,
        });
    }

    // A time of the morning that has passed is more likely one of the afternoon, one of the afternoon tomorrow's.
    private string Likelier(DateTimeOffset back, DayTime? said, Request request)
    {
        var (later, zone) = (back.AddHours(12), request.Caller.Zone);
        return CommandLine.Pair(options.DueBack.Name, said is not { IsClockAlone: true } ? "2 hours"
            : later > request.At && said.Clock.Hour < 12 ? DayTime.Hour(later, zone)
            : $"tomorrow {DayTime.Hour(back, zone)}");
    }
}
