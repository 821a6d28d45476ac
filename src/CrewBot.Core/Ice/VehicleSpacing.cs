using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>How far apart parked vehicles belong, where they are permitted at all.</summary>
/// <remarks>The larger of 50 ft (Minnesota DNR) and 100 times the ice's thickness (US Army Corps, from memory).</remarks>
public static class VehicleSpacing
{
    private static readonly Length Least = Length.FromFeet(50);

    /// <summary>The spacing on ice of a thickness, from 0 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ice"/> lies outside its range.</exception>
    public static Length On(Length ice)
    {
        var byThickness = Length.FromMeters(100 * ValidRange.Closed(ice.Meters, 0, 3, "m", nameof(ice)));
        return byThickness > Least ? byThickness : Least;
    }
}
