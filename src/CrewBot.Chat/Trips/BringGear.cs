using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Trips;

/// <summary>Answers <c>/trip bring</c>: something that the trade knows, or gear of one's own.</summary>
public sealed class BringGear(TripOptions options, TripDesk desk, TradeKnowledge knowledge) : ICommandHandler
{
    private const double NanogramsInKilogram = 1e12;
    private const double AssumedKilograms = 10;

    public CommandInfo Info { get; } = new(
        "trip bring", "Say what you bring: a shelter, heater, auger, sled, rope...", "/trip bring item:hub count:1",
        [options.Item, options.Count, options.As, options.Seats, options.Weight, options.Trip])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        request.TryGet(options.Item, out var name)
            ? desk.ChangeAsync(request, (scene, member, session) => BringAsync(request, scene, member, session, name), cancellationToken)
            : desk.ReadAsync(request, (scene, session) => OfferAsync(request, scene, session), cancellationToken);

    private async Task<Reply> OfferAsync(Request request, TripScene scene, CrewSession session)
    {
        var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
        return new BoxOffer(knowledge, options).Of(scene, member is null ? [] : await new BoxRepository(session).OfAsync(member.Id));
    }

    private async Task<TripChange> BringAsync(Request request, TripScene scene, CrewMember member, CrewSession session, string name)
    {
        if (scene.PartyOf(member.Id) is not { Answer: TripAnswer.In })
        {
            return TripChange.Refuse(TripWords.NotOn(scene, request));
        }

        var crews = await new TripRepository(session).FindOwnAsync(name);
        if (!request.Has(options.As) && !knowledge.Gear.TryFind(name, out _) && crews is null)
        {
            return TripChange.Refuse(new UnknownGear(knowledge, options).Of(scene, name));
        }

        var item = ItemOf(request, scene, member, name, crews);
        if (item.Family is nameof(GearFamily.Shelter) or nameof(GearFamily.Vehicle) && item.Seats == 0)
        {
            return TripChange.Refuse($"How many sit in {Quoting.Quote(name)}? Give seats, such as seats:4.");
        }

        var count = request.GetOr(options.Count, 1);
        var roster = scene.Trip.Roster;
        var trip = scene.Trip with
        {
            Roster = count == 0 ? roster.Without(item) : roster with { Items = [.. roster.Items.Where(one => one.Number != item.Number), item with { Count = count }] },
        };
        return TripChange.To(trip, changed => TripCard.Of(
            changed, request, count == 0 ? $"{member.Name} brings no {changed.GearOf(item).Name}" : $"{member.Name} brings {TripWords.Count(count, changed.GearOf(item).Name)}"));
    }

    private TripItem ItemOf(Request request, TripScene scene, CrewMember member, string name, TripItem? crews)
    {
        var items = scene.Trip.Roster.Items;
        var key = request.Has(options.As) ? name : knowledge.Gear.TryFind(name, out var known) ? known.Key : crews!.Kind;
        if (items.FirstOrDefault(item => item.MemberId == member.Id && item.Kind == key) is { } before && !request.Has(options.As))
        {
            return before;
        }

        var own = request.TryGet(options.As, out var family)
            ? new TripItem(0, member.Id, key, 1)
            {
                Family = family.ToString(),
                Seats = request.GetOr(options.Seats, 0),
                MassNanograms = (long)((request.TryGet(options.Weight, out var weight) ? weight.Kilograms : AssumedKilograms) * NanogramsInKilogram),
            }
            : knowledge.Gear.Has(key) ? new TripItem(0, member.Id, key, 1) : crews!;
        return own with { Number = items.Select(item => item.Number).DefaultIfEmpty(0).Max() + 1, MemberId = member.Id, Count = 1 };
    }
}
