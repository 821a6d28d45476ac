using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>When a lure is heavy enough for the depth and the current.</summary>
public static class LureFit
{
    private const double PatienceSeconds = 4;
    private const double SlowestAverage = 0.5; // m/s

    /// <summary>How far a line may lean before the lure is no longer under the hole, nor its bite felt.</summary>
    /// <remarks>Source: common practice, a judgement.</remarks>
    public static Angle GreatestLean { get; } = Angle.FromDegrees(30);

    /// <summary>The longest anyone cares to wait for a lure to get down.</summary>
    /// <param name="depth">Depth of the water.</param>
    /// <remarks>Source: common practice, a judgement: four seconds, and half a metre a second on average.</remarks>
    public static Duration LongestDrop(Length depth) =>
        Duration.FromSeconds(PatienceSeconds + (depth.Meters / SlowestAverage));

    /// <summary>Whether a lure gets down in time, at the slow end of how it falls.</summary>
    public static bool GetsDown(Lure lure, LineInWater line, Length depth, Temperature water) =>
        Drop.To(depth, lure.Slow, line, water) is { } drop && drop.Time <= LongestDrop(depth);

    /// <summary>Whether a lure stays under the hole in a current.</summary>
    public static bool Holds(Lure lure, LineInWater line, Length depth, Speed current, Temperature water) =>
        Blowback.AtDepth(depth, lure.Slow, line, current, water) is { } hang && hang.AtHole <= GreatestLean;
}
