using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>A knot on a material of which a crew has its own range.</summary>
/// <param name="Knot">The knot, as the trade has it.</param>
/// <param name="Line">The material.</param>
/// <param name="Range">The crew's own range.</param>
/// <param name="Count">From how many break-offs.</param>
internal sealed record OwnKnot(Knot Knot, LineMaterial Line, Spread<double> Range, int Count)
{
    /// <summary>"Your crew's double uni on braid parts at 55–72 % of the label, from 7 break-offs (the trade says 50–80 %)."</summary>
    public string Told =>
        $"Your crew's {Knot.Name} on {Line.Name} parts at {Percent(Range)} of the label, from {Count} break-offs (the trade says {Percent(Knot.Efficiency[Line.Key])}).";

    public IEnumerable<Figure> Figures =>
        [RigFigures.KnotLow.Of(Range.Low), RigFigures.KnotHigh.Of(Range.High), RigFigures.KnotBreaks.Of(Count)];

    /// <summary>The crew's own range for a knot on a material; null while too few have parted.</summary>
    public static OwnKnot? Of(Knot knot, LineMaterial line, CrewKnots crew) =>
        crew.RangeOf(knot, line) is { } range ? new OwnKnot(knot, line, range, crew.CountOf(knot, line)) : null;

    private static string Percent(Spread<double> range) => string.Create(CultureInfo.InvariantCulture, $"{100 * range.Low:0}–{100 * range.High:0} %");
}
