using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Trips;

/// <summary>Something that somebody brings on a trip.</summary>
/// <param name="Family">What it is there for.</param>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Mass">What one weighs.</param>
public sealed record BroughtGear(GearFamily Family, string Name, int Count, Mass Mass)
{
    /// <summary>Seats of one; 0 where nobody sits.</summary>
    public int Seats { get; init; }

    /// <summary>What one carries or pulls; nothing where it is no sled or machine.</summary>
    public Mass Carries { get; init; }

    /// <summary>What one gives at full; nothing where it is no heater.</summary>
    public Power Heat { get; init; }

    /// <summary>One piece, or more, of a kind that the trade knows.</summary>
    public static BroughtGear Of(GearKind kind, int count = 1) => new(kind.Family, kind.Name, count, kind.Mass)
    {
        Seats = kind.Seats ?? 0,
        Carries = kind.Carries ?? Mass.Zero,
        Heat = kind.Heat ?? Power.Zero,
    };
}
