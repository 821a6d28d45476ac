using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Tries the sizes of a presentation against depth and current.</summary>
/// <param name="ask">Depth, current and water.</param>
/// <param name="presentation">Whose sizes.</param>
/// <param name="material">What they are made of.</param>
/// <param name="line">The line behind them.</param>
/// <remarks>
/// A heavier size of the same presentation is always quicker down and leans less, so whoever wants a size asks from
/// there upwards.
/// </remarks>
internal sealed class LureTrial(RigAsk ask, Presentation presentation, LureMaterial material, LineInWater line)
{
    private const double SameWithinKilograms = 1e-6;

    private static readonly Density NeutralLine = Density.FromKilogramsPerCubicMeter(1000);

    private readonly Mass[] _weights = presentation.Weights;
    private readonly Density _density = presentation.BodyDensity ?? material.Density;

    // Sinking line pulls a lure down the more of it is out. Counted on, deeper water would ask for a lighter lure.
    private readonly LineInWater _line =
        line.Density.KilogramsPerCubicMeter > NeutralLine.KilogramsPerCubicMeter ? line with { Density = NeutralLine } : line;

    /// <summary>How many sizes there are.</summary>
    public int Count => _weights.Length;

    /// <summary>The lightest size that is no lighter than a weight, −1 for none.</summary>
    // Quantities are compared by their number: their own equality tells 16 oz from 1 lb, and costs memory.
    public int From(Mass weight) =>
        Array.FindIndex(_weights, size => size.Kilograms > weight.Kilograms - SameWithinKilograms);

    /// <summary>The lightest of the sizes from one up that gets down in good time; null when none does.</summary>
    public int? GetsDown(int from) => GetsDown(from, Count);

    /// <summary>The lightest of the sizes from one up that stays under the hole; null when none does.</summary>
    public int? Holds(int from) => Holds(from, Count);

    /// <summary>Whether a size does both.</summary>
    public bool Does(int size) => GetsDown(size, size + 1) is not null && Holds(size, size + 1) is not null;

    private int? GetsDown(int from, int end) => PlaceOf(LureWeight.LightestToReach(
        Weights(from, end), _density, presentation.Fall.Low, _line, ask.Depth, LureFit.LongestDrop(ask.Depth), ask.Water));

    private int? Holds(int from, int end) => ask.Current.MetersPerSecond == 0 ? from : PlaceOf(LureWeight.LightestToHold(
        Weights(from, end), _density, presentation.Fall.Low, _line, ask.Depth, ask.Current, LureFit.GreatestLean, ask.Water));

    private ArraySegment<Mass> Weights(int from, int end) => new(_weights, from, end - from);

    private int? PlaceOf(Mass? weight) => weight is { } found ? From(found) : null;
}
