using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>
/// The dead-bait rig of two trebles on wire that holds a bait level and lets the angler strike at once.
/// </summary>
/// <remarks>
/// Common practice: one treble in the top of the head, one just behind the start of the dorsal fin, one point of each
/// in the bait. Pike seize the middle, so one hook is in the mouth whichever way the bait is turned.
/// </remarks>
public static class TwoTrebleRig
{
    private const double LeastShareOfBait = 0.35;
    private const double MostShareOfBait = 0.50;
    private const double ShortestBaitInches = 4; // shorter, and the spacing falls below the usual 2 in
    private const double LongestBaitInches = 17; // longer, and it passes the usual 6 in

    /// <summary>Tells whether a bait gives a spacing within the 2 to 6 in that such rigs have.</summary>
    public static bool Suits(Length bait) => bait.Inches is >= ShortestBaitInches and <= LongestBaitInches;

    /// <summary>Computes the distance between the trebles: 0.35 to 0.50 of the bait's length.</summary>
    /// <param name="bait">Length of the bait, from 4 to 17 in; ask <see cref="Suits"/> first.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bait"/> lies outside that range.</exception>
    public static HookSpacing SpacingFor(Length bait)
    {
        ValidRange.Closed(bait.Inches, ShortestBaitInches, LongestBaitInches, "in", nameof(bait));
        return new HookSpacing(bait * LeastShareOfBait, bait * MostShareOfBait);
    }
}
