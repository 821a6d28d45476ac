using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a kind of gear.</summary>
internal static class GearCheck
{
    private const int MostSeats = 12;
    private const double HeaviestKilograms = 4000;

    private static readonly GearFamily[] Seated = [GearFamily.Shelter, GearFamily.Machine, GearFamily.Vehicle];
    private static readonly GearFamily[] Hauling = [GearFamily.Sled, GearFamily.Machine];

    public static IEnumerable<Misfit> Misfits(GearKind gear)
    {
        if (!(gear.Mass > Mass.Zero && gear.Mass.Kilograms <= HeaviestKilograms))
        {
            yield return new("mass", "A mass lies above 0 and up to 4000 kg.");
        }

        if (Seated.Contains(gear.Family) != gear.Seats.HasValue || gear.Seats is < 1 or > MostSeats)
        {
            yield return new("seats", "A shelter, machine or vehicle has 1 to 12 seats, and nothing else has any.");
        }

        if (Hauling.Contains(gear.Family) != gear.Carries.HasValue || gear.Carries <= Mass.Zero)
        {
            yield return new("carries", "A sled or machine carries more than nothing, and nothing else carries.");
        }

        if ((gear.Family == GearFamily.Shelter) != gear.Footprint.HasValue || gear.Footprint <= Area.Zero)
        {
            yield return new("footprint", "A shelter covers more than nothing, and nothing else has a footprint.");
        }

        if ((gear.Family == GearFamily.Heater) != gear.Heat.HasValue || gear.Heat <= Power.Zero)
        {
            yield return new("heat", "A heater gives more than nothing, and nothing else heats.");
        }

        if ((gear.Family == GearFamily.Auger) != gear.Hole.HasValue || gear.Hole <= Length.Zero)
        {
            yield return new("hole", "An auger cuts a hole, and nothing else does.");
        }
    }
}
