using System.Globalization;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Trips;

/// <summary>What a trip needs against what is brought.</summary>
public static class TripNeeds
{
    // A sled of the common size; only to say how many more it takes. Common practice.
    private static readonly Mass OneSled = Mass.FromKilograms(120);

    /// <summary>Reckons every need, met or not, in the order of the rules.</summary>
    /// <param name="people">Who comes, children among them; 0 or more.</param>
    /// <param name="brought">What is brought.</param>
    /// <param name="rules">The rules; their figures are common practice unless their source says otherwise.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than no people.</exception>
    public static IReadOnlyList<Need> Of(int people, IReadOnlyCollection<BroughtGear> brought, IEnumerable<NeedRule> rules)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(people);
        ArgumentNullException.ThrowIfNull(brought);
        return [.. rules.Select(rule => rule.Basis switch
        {
            NeedBasis.Seats => Seats(rule, people, brought),
            NeedBasis.Heaters => PerHeater(rule, brought),
            NeedBasis.Load => Load(rule, brought),
            _ => PerPeople(rule, people, brought),
        })];
    }

    /// <summary>What has to be hauled over the ice: everything but what hauls, what stays ashore and what people wear.</summary>
    public static Mass ToHaul(IEnumerable<BroughtGear> brought) => Sum(brought.Where(gear =>
        gear.Family is not (GearFamily.Sled or GearFamily.Machine or GearFamily.Vehicle or GearFamily.Picks)), gear => gear.Mass);

    private static string People(int number) => string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? "person" : "people")}");

    private static Need PerPeople(NeedRule rule, int people, IEnumerable<BroughtGear> brought)
    {
        var needed = RoundUp(people, rule.Per);
        var offered = Pieces(brought, rule.Family);
        return new Need(rule, needed, offered, rule.Per == 1
            ? (FormattableString)$"{People(people)}, one each: {needed}; {offered} brought"
            : $"{People(people)} ÷ {rule.Per}, rounded up: {needed}; {offered} brought");
    }

    private static Need Seats(NeedRule rule, int people, IEnumerable<BroughtGear> brought)
    {
        var seats = brought.Where(gear => gear.Family == rule.Family).Sum(gear => gear.Seats * gear.Count);
        var parts = string.Join(" + ", brought.Where(gear => gear.Family == rule.Family).SelectMany(gear => Enumerable.Repeat(gear.Seats, gear.Count)));
        return new Need(rule, people, seats, parts.Contains('+', StringComparison.Ordinal)
            ? (FormattableString)$"{People(people)}; seats {parts} = {seats}"
            : $"{People(people)}; {seats} seats");
    }

    private static Need PerHeater(NeedRule rule, IReadOnlyCollection<BroughtGear> brought)
    {
        var heaters = Pieces(brought, GearFamily.Heater);
        var needed = RoundUp(heaters, rule.Per);
        var offered = Pieces(brought, rule.Family);
        return new Need(rule, needed, offered, $"{heaters} {(heaters == 1 ? "heater" : "heaters")}, a shelter each: {needed}; {offered} brought");
    }

    private static Need Load(NeedRule rule, IReadOnlyCollection<BroughtGear> brought)
    {
        var load = ToHaul(brought);
        var carried = Sum(brought, gear => gear.Carries);
        var sleds = Pieces(brought, rule.Family);
        var more = load > carried ? (int)Math.Ceiling((load - carried) / OneSled) : 0;
        return new Need(rule, sleds + more, sleds, $"{load} to haul; sleds and machines take {carried}");
    }

    private static int Pieces(IEnumerable<BroughtGear> brought, GearFamily family) =>
        brought.Where(gear => gear.Family == family).Sum(gear => gear.Count);

    private static Mass Sum(IEnumerable<BroughtGear> brought, Func<BroughtGear, Mass> of) =>
        Mass.FromKilograms(brought.Sum(gear => of(gear).Kilograms * gear.Count));

    private static int RoundUp(int number, int per) => (number + per - 1) / per;
}
