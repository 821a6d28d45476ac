using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>A span of depths in which fishing is counted together. The bounds are judgement, at round feet.</summary>
/// <param name="From">The shallow end, included.</param>
/// <param name="To">The deep end, not included; null for the deepest zone.</param>
public sealed record DepthZone(Length From, Length? To)
{
    /// <summary>Every zone, shallowest first: bounds at 10, 20, 30 and 50 ft.</summary>
    public static IReadOnlyList<DepthZone> All { get; } = Between([0, 10, 20, 30, 50]);

    /// <summary>The zone that a depth lies in.</summary>
    public static DepthZone Of(Length depth) => All.Last(zone => zone.From.Meters <= depth.Meters || zone == All[0]);

    private static IReadOnlyList<DepthZone> Between(double[] feet) =>
    [
        .. feet.Select((from, index) => new DepthZone(
            Length.FromFeet(from), index + 1 < feet.Length ? Length.FromFeet(feet[index + 1]) : null)),
    ];
}
