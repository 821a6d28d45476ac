using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Trips;

/// <summary>What stands on the ice when a trip gathers at its spot.</summary>
/// <param name="People">People, dressed for it.</param>
/// <param name="Gear">Everything they bring that does not stay ashore, sleds and machines among it.</param>
public sealed record GatheredLoad(Mass People, Mass Gear)
{
    // Dressed for the ice, boots and float coat on: heavier than the usual 75 to 80 kg of a person on paper. Common practice.
    private static readonly Mass OnePerson = Mass.FromKilograms(100);

    public Mass Total => People + Gear;

    /// <summary>Adds up the load.</summary>
    /// <param name="people">Who comes, 0 or more; a child counts in full.</param>
    /// <param name="brought">What is brought; vehicles stay ashore.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than no people.</exception>
    public static GatheredLoad Of(int people, IEnumerable<BroughtGear> brought)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(people);
        return new GatheredLoad(
            people * OnePerson,
            Mass.FromKilograms(brought.Where(gear => gear.Family != GearFamily.Vehicle).Sum(gear => gear.Mass.Kilograms * gear.Count)));
    }
}
