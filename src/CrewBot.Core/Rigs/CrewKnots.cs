using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>A crew's knots, as those of them tell that parted.</summary>
/// <param name="parted">Every one whose pull was read, in any order.</param>
public sealed class CrewKnots(IEnumerable<PartedKnot> parted)
{
    /// <summary>How many break-offs of a knot on a material it takes until the crew's own range stands for the trade's (judgement).</summary>
    public const int Enough = 5;

    private readonly ILookup<(string Knot, string Line), double> _shares = parted.ToLookup(knot => (knot.Knot, knot.Line), knot => knot.Share);

    /// <summary>How many of a knot on a material parted.</summary>
    public int CountOf(Knot knot, LineMaterial line) => _shares[(knot.Key, line.Key)].Count();

    /// <summary>The crew's own range for a knot on a material; null while it has parted too seldom, or the trade has none.</summary>
    public Spread<double>? RangeOf(Knot knot, LineMaterial line) =>
        CountOf(knot, line) >= Enough && knot.Efficiency.TryGetValue(line.Key, out var trade)
            ? KnotRange.Of(trade, [.. _shares[(knot.Key, line.Key)]])
            : null;

    /// <summary>The knot with the crew's own range on a material, or as the trade has it.</summary>
    public Knot AsTied(Knot knot, LineMaterial line) => RangeOf(knot, line) is { } own
        ? knot with { Efficiency = new Dictionary<string, Spread<double>>(knot.Efficiency) { [line.Key] = own } }
        : knot;
}
