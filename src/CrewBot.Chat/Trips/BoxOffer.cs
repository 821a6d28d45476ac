using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Trips;

/// <summary>Offers for a trip what is in somebody's box, as buttons, and what the trade knows, as a list.</summary>
internal sealed class BoxOffer(TradeKnowledge knowledge, TripOptions options)
{
    private const int MostButtons = 8;

    // More than one list can hold.
    private static readonly GearFamily[] Hauled =
        [GearFamily.Shelter, GearFamily.Heater, GearFamily.CoAlarm, GearFamily.Auger, GearFamily.Sled];

    public Reply Of(TripScene scene, IReadOnlyList<OwnedGear> box)
    {
        var offers = box.Select(owned => Offer(scene, owned.Gear)).OfType<ReplyAction>().DistinctBy(offer => offer.Command).Take(MostButtons).ToList();
        return new Reply
        {
            Headline = $"What do you bring on trip {scene.Trip.Number}?",
            Lines =
            [
                offers.Count == 0
                    ? "Your box holds nothing for it yet: /box add item:\"shelter for 4, heater, sled\" and it is offered here."
                    : $"From your box: {string.Join(", ", offers.Select(offer => offer.Label))}.",
                "By hand: /trip bring item:hub count:1. Gear of your own: add as, such as item:\"red barn\" as:shelter seats:5.",
            ],
            Actions = offers,
            Choices =
            [
                List(scene, "Shelter, heat, holes, sleds", kind => Hauled.Contains(kind.Family)),
                List(scene, "Ride, rescue kit and the rest", kind => !Hauled.Contains(kind.Family)),
            ],
        };
    }

    // What the trade knows it as, by its name or by its figure; a shelter of other seats is gear of one's own.
    private ReplyAction? Offer(TripScene scene, Gear gear)
    {
        var known = knowledge.Gear.TryFind(gear.Name, out var named) ? named : gear.Kind switch
        {
            BoxKind.Shelter => knowledge.Gear.FirstOrDefault(kind => kind.Family == GearFamily.Shelter && kind.Seats == gear.Seats),
            BoxKind.Auger => Augers(gear.Width),
            BoxKind.Heater => knowledge.Gear.First(kind => kind.Family == GearFamily.Heater),
            BoxKind.Sled => knowledge.Gear.First(kind => kind.Family == GearFamily.Sled),
            BoxKind.RescueKit => knowledge.Gear.First(kind => kind.Family == (gear.Name.Contains("rope", StringComparison.OrdinalIgnoreCase) ? GearFamily.ThrowRope : GearFamily.Picks)),
            _ => null,
        };
        return (known, gear) switch
        {
            ({ } kind, _) => Button(scene, gear.Name == kind.Name ? kind.Name : $"{gear.Name} ({kind.Name})", (options.Item, kind.Name)),
            (null, { Kind: BoxKind.Shelter, Seats: { } seats }) => Button(
                scene, gear.Name, (options.Item, gear.Name), (options.As, "shelter"), (options.Seats, seats.ToString(CultureInfo.InvariantCulture))),
            _ => null,
        };
    }

    private ReplyChoice List(TripScene scene, string prompt, Func<GearKind, bool> isIn) => ReplyChoice.Of(
        prompt, "trip bring", TripCard.Options(scene), options.Item, knowledge.Gear.Where(isIn).Select(kind => (kind.Name, kind.Name)));

    private GearKind Augers(ExactLength? width)
    {
        var augers = knowledge.Gear.Where(kind => kind.Family == GearFamily.Auger);
        return width is { } wide
            ? augers.MinBy(kind => Math.Abs((kind.Hole!.Value - wide.Length).Millimeters))!
            : augers.First();
    }

    private static ReplyAction Button(TripScene scene, string label, params IEnumerable<(CommandOption Option, string Text)> given) => new(
        label, ActionKind.Run, "trip bring",
        given.Aggregate(new Dictionary<string, string>(TripCard.Options(scene)), (all, one) => new(all) { [one.Option.Name] = one.Text }));
}
