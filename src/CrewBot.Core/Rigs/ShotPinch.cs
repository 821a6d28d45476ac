using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>How many split shot of which size make up a weight, on one of the two national scales.</summary>
/// <param name="Count">How many.</param>
/// <param name="Shot">Of which size.</param>
public sealed record ShotPinch(int Count, SplitShot Shot)
{
    private const int MostShot = 4;
    private const double GoodToATenth = 0.1; // what any one shot is good to by nature

    /// <summary>Finds the fewest equal shot that come within a tenth of a weight.</summary>
    /// <param name="weight">The weight to make up, above zero.</param>
    /// <param name="shot">The sizes there are.</param>
    /// <param name="scale">Whose sizes to take.</param>
    /// <returns>Null when no four equal shot come that near.</returns>
    public static ShotPinch? For(Mass weight, IEnumerable<SplitShot> shot, ShotScale scale) => shot
        .Where(size => size.Scale == scale)
        .SelectMany(size => Enumerable.Range(1, MostShot).Select(count => new ShotPinch(count, size)))
        .Where(pinch => pinch.OffFrom(weight) <= GoodToATenth)
        .OrderBy(pinch => pinch.Count)
        .ThenBy(pinch => pinch.OffFrom(weight))
        .FirstOrDefault();

    private double OffFrom(Mass weight) => Math.Abs((Count * Shot.Mass.Grams / weight.Grams) - 1);
}
