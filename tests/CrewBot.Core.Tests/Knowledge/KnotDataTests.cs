using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class KnotDataTests
{
    private static readonly RecordSet<Knot> Knots = TradeKnowledge.BuiltIn.Knots;

    // Ranges, not single values: angling site knot chart (double uni, Palomar, clinch and uni in nylon, upper ends),
    // the rest commonly reported and from memory. Braid means braid to leader for a join.
    [Theory]
    [InlineData("double-uni", "nylon", 0.80, 0.95)]
    [InlineData("double-uni", "braid", 0.50, 0.80)]
    [InlineData("fg", "braid", 0.80, 1.00)]
    [InlineData("alberto", "braid", 0.70, 0.95)]
    [InlineData("palomar", "nylon", 0.85, 0.95)]
    [InlineData("palomar", "braid", 0.60, 0.90)]
    [InlineData("improved-clinch", "nylon", 0.75, 0.90)]
    [InlineData("uni", "nylon", 0.85, 0.95)]
    [InlineData("snell", "nylon", 0.85, 1.00)]
    [InlineData("non-slip-loop", "nylon", 0.80, 0.95)]
    public void Efficiency_OfKnot_IsTheReportedRange(string key, string line, double low, double high) =>
        Assert.Equal((low, high), (Knots[key].Efficiency[line].Low, Knots[key].Efficiency[line].High));

    // The double uni is the join to tie on the ice, the FG one for the kitchen table: common practice.
    [Fact]
    public void ColdHands_OfTheJoins_PreferTheDoubleUni() => Assert.Equal(
        ["double-uni", "alberto", "fg"],
        Knots.Where(knot => knot.Kind == KnotKind.Join).OrderByDescending(knot => knot.ColdHands).Select(knot => knot.Key));
}
