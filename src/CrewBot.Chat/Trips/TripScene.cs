using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Ice;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Trips;
using CrewBot.Core.Trips.Seating;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Trips;
using UnitsNet;

namespace CrewBot.Chat.Trips;

/// <summary>A trip with everything that its replies speak of.</summary>
/// <param name="Trip">The trip.</param>
/// <param name="Water">What the crew calls its water.</param>
/// <param name="Names">What people are called, by their number.</param>
/// <param name="Knowledge">What the trade knows.</param>
public sealed record TripScene(Trip Trip, string Water, IReadOnlyDictionary<long, string> Names, TradeKnowledge Knowledge)
{
    private const double NanogramsInKilogram = 1e12;

    /// <summary>Where the water lies, to two decimals of a degree; null when nobody said.</summary>
    public (decimal Latitude, decimal Longitude)? At { get; init; }

    /// <summary>The rules of the water as the crew read them; null when nobody filled them in.</summary>
    public WaterRules? Rules { get; init; }

    /// <summary>What is known of the ice.</summary>
    internal IcePicture Ice { get; init; } = new([], []);

    /// <summary>Whom it speaks to.</summary>
    public required TripContacts Contacts { get; init; }

    public IEnumerable<TripParty> Coming => Trip.Roster.Parties.Where(party => party.Answer == TripAnswer.In);

    public int People => Coming.Sum(party => party.People);

    /// <summary>What those who come bring.</summary>
    public IEnumerable<TripItem> Items => Trip.Roster.Items.Where(item => Coming.Any(party => party.MemberId == item.MemberId));

    public IReadOnlyList<BroughtGear> Brought => [.. Items.Select(GearOf)];

    public IReadOnlyList<Need> Needs => TripNeeds.Of(People, Brought, Knowledge.Needs);

    /// <summary>Needs that are not met, and that nobody answers for.</summary>
    public IEnumerable<Need> Missing => Needs.Where(need => !need.IsMet && (need.Rule.IsSafety || Trip.Roster.Waivers.All(waiver => waiver.Need != need.Rule.Key)));

    public string NameOf(long member) => Names.TryGetValue(member, out var name) ? name : "former angler";

    public TripParty? PartyOf(long member) => Trip.Roster.Parties.FirstOrDefault(party => party.MemberId == member);

    /// <summary>The people of some of its parties.</summary>
    public IEnumerable<CrewMember> PeopleOf(IEnumerable<TripParty> parties) =>
        parties.Select(party => PersonMeant.Known(party.MemberId, NameOf(party.MemberId), Contacts.Members.Values));

    public BroughtGear GearOf(TripItem item) => item.Family is null && Knowledge.Gear.Has(item.Kind)
        ? BroughtGear.Of(Knowledge.Gear[item.Kind], item.Count)
        : new BroughtGear(Enum.Parse<GearFamily>(item.Family ?? nameof(GearFamily.Other)), item.Kind, item.Count, Mass.FromKilograms(item.MassNanograms / NanogramsInKilogram))
        {
            Seats = item.Seats,
        };

    /// <summary>The question of who sits where.</summary>
    public SeatingAsk SeatingAsk()
    {
        var people = Coming.SelectMany(SittersOf).ToList();
        var keys = people.Select(sitter => sitter.Key).ToHashSet();
        return new SeatingAsk(people, [.. Items.SelectMany(SheltersOf)],
        [
            .. Coming.SelectMany(party => Enumerable.Range(1, party.People - party.Children - 1).Select(guest => new SeatingWish(KeyOf(party), $"{KeyOf(party)}+{guest}"))),
            .. Trip.Roster.Wishes.Select(wish => new SeatingWish(KeyOf(wish.One), KeyOf(wish.Other), wish.IsApart))
                .Where(wish => keys.Contains(wish.One) && keys.Contains(wish.Other)),
        ]);
    }

    /// <summary>The shelter that somebody was told, if it still comes; null for none.</summary>
    public string? SeatOf(TripParty party) =>
        Trip.Roster.Seats.TryGetValue(KeyOf(party), out var shelter) && Items.Any(item => shelter.StartsWith(Prefix(item), StringComparison.Ordinal))
            ? ShelterName(shelter)
            : null;

    /// <summary>What a piece of gear is called, with whose it is.</summary>
    public string ShelterName(string key)
    {
        var item = Trip.Roster.Items.First(item => key.StartsWith(Prefix(item), StringComparison.Ordinal));
        return $"{NameOf(item.MemberId)}'s {GearOf(item).Name}";
    }

    /// <summary>Whether the key of a seat is somebody's, or of who comes with them.</summary>
    public static bool IsOf(string key, long member) => key == KeyOf(member) || key.StartsWith($"{KeyOf(member)}+", StringComparison.Ordinal);

    private IEnumerable<Sitter> SittersOf(TripParty party)
    {
        var name = NameOf(party.MemberId);
        for (var person = 0; person < party.People; person++)
        {
            var key = person == 0 ? KeyOf(party) : $"{KeyOf(party)}+{person}";
            var isChild = person >= party.People - party.Children;
            yield return new Sitter(key, person == 0 ? name : isChild ? $"{name}'s child" : $"{name}'s guest")
            {
                Guardian = isChild && person > 0 ? KeyOf(party) : null,
                Smokes = person == 0 && party.Smokes,

                // Nobody smokes over a child.
                AsksSmokeFree = isChild || (person == 0 && party.AsksSmokeFree),
                Before = Trip.Roster.Seats.TryGetValue(key, out var shelter) ? shelter : null,
            };
        }
    }

    private IEnumerable<OfferedShelter> SheltersOf(TripItem item)
    {
        var gear = GearOf(item);
        return gear is { Family: GearFamily.Shelter, Seats: > 0 }
            ? Enumerable.Range(0, gear.Count).Select(piece => new OfferedShelter(
                $"{Prefix(item)}{piece}", $"{NameOf(item.MemberId)}'s {gear.Name}", gear.Seats, KeyOf(item.MemberId)))
            : [];
    }

    /// <summary>What the keys of a thing's shelters begin with.</summary>
    public static string Prefix(TripItem item) => string.Create(CultureInfo.InvariantCulture, $"i{item.Number}.");

    private static string KeyOf(TripParty party) => KeyOf(party.MemberId);

    private static string KeyOf(long member) => string.Create(CultureInfo.InvariantCulture, $"m{member}");
}
