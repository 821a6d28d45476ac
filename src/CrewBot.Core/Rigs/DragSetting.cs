using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Drag to set, measured at the rod tip.</summary>
/// <param name="Low">A quarter of the low end of the weakest link.</param>
/// <param name="High">A third of it, taken as 33 %.</param>
/// <remarks>Common practice: 25–33 % of the weakest link, knots included.</remarks>
public sealed record DragSetting(Force Low, Force High)
{
    private const double LowShare = 0.25;
    private const double HighShare = 0.33;

    /// <summary>Sets the drag for a rig.</summary>
    public static DragSetting For(WeakestLink weakest) => new(weakest.Low * LowShare, weakest.Low * HighShare);
}
