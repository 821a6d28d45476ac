using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip join</c>: in, maybe or out, with how many, and with whom one would sit.</summary>
public sealed class JoinTrip(TripOptions options, TripDesk desk) : ICommandHandler
{
    private const int NearestShown = 3;

    public CommandInfo Info { get; } = new(
        "trip join", "Say whether you come, how many you are, and with whom you would sit", "/trip join answer:in party:3 children:1",
        [options.Answer, options.Trip, TripOptions.Party, TripOptions.Children, options.Smoke, options.With, options.Apart])
    {
        AlsoSaid = ["trip in", "trip yes", "trip no", "trip come", "trip going", "count me in"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        desk.ChangeAsync(request, (scene, member, _) => Task.FromResult(Answer(request, scene, member)), cancellationToken);

    private TripChange Answer(Request request, TripScene scene, CrewMember member)
    {
        var trip = scene.Trip;
        var before = scene.PartyOf(member.Id) ?? new TripParty(member.Id, TripAnswer.In, 1, 0);
        var party = Party(request, before);
        if (FaultOf(request, trip, before, party) is { } fault)
        {
            return TripChange.Refuse(fault);
        }

        var wishes = trip.Roster.Wishes.ToList();
        if ((Wish(options.With, isApart: false) ?? Wish(options.Apart, isApart: true)) is { } stranger)
        {
            return TripChange.Refuse(stranger);
        }

        return TripChange.To(
            trip with { Roster = trip.Roster with { Parties = [.. trip.Roster.Parties.Where(one => one.MemberId != member.Id), party], Wishes = wishes } },
            changed => TripCard.Of(changed, request));

        string? Wish(CommandOption<string> option, bool isApart)
        {
            if (!request.TryGet(option, out var name))
            {
                return null;
            }

            var whom = Companion(option, name, scene, member);
            if (whom.Fault is null)
            {
                wishes.RemoveAll(wish => wish.One == member.Id && wish.Other == whom.Value!.Id);
                wishes.Add(new TripWish(member.Id, whom.Value!.Id, isApart));
            }

            return whom.Fault;
        }
    }

    private TripParty Party(Request request, TripParty before)
    {
        var children = request.GetOr(TripOptions.Children, before.Children);
        return before with
        {
            Answer = request.GetOr(options.Answer, TripAnswer.In),
            People = request.GetOr(TripOptions.Party, Math.Max(before.People, children + 1)),
            Children = children,
            Smokes = request.TryGet(options.Smoke, out var smokes) ? smokes : before.Smokes,
            AsksSmokeFree = request.Has(options.Smoke) ? !smokes : before.AsksSmokeFree,
        };
    }

    private static string? FaultOf(Request request, Trip trip, TripParty before, TripParty party) =>
        trip.ReturnAt < request.At ? $"Trip {trip.Number} was on {DayTime.Show(trip.MeetAt, request.Caller.Zone)}: it is over."
        : party.Children >= party.People
            ? $"{TripWords.Count(party.People, "people")} and {party.Children} of them children: party counts you too, such as party:{party.Children + 1} children:{party.Children}."
        : before.IsOnTheIce && party.Answer != TripAnswer.In ? "You are on the ice: say /trip back first."
        : null;

    // A wish names somebody who comes.
    private static Reading<CrewMember> Companion(CommandOption option, string name, TripScene scene, CrewMember member)
    {
        var others = scene.PeopleOf(scene.Trip.Roster.Parties).Where(one => one.Id != member.Id).ToList();
        return PersonMeant.Fitting(name, others) switch
        {
            [var only] => only,
            { Count: > 1 } several => new Misread(PersonMeant.Which(option, name, several)),
            _ => new Misread($"{Quoting.Quote(name)} has not answered for this trip: a wish names somebody who comes. {Nearest.Offer(name, others.Select(one => one.Name), NearestShown, "")}".TrimEnd()),
        };
    }
}
