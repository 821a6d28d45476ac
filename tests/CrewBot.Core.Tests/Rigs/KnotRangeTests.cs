using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CsCheck;

namespace CrewBot.Core.Tests.Rigs;

public sealed class KnotRangeTests
{
    private const double Rounding = 1e-12;

    private static readonly Gen<Spread<double>> AnyTrade = Gen.Select(Gen.Double[0.3, 1], Gen.Double[0.01, 0.5], (low, width) =>
        new Spread<double> { Low = low, High = Math.Min(1.2, low + width) });

    private static readonly Gen<double[]> AnyShares = Gen.Double[0.01, 2.5].Array[0, 60];

    private static readonly Spread<double> DoubleUniOnBraid = new() { Low = 0.5, High = 0.8 };

    [Fact]
    public void Of_NoBreakOffs_IsTheTradesRange() => AnyTrade.Sample(trade =>
    {
        var own = KnotRange.Of(trade, []);

        Assert.Equal(trade.Low, own.Low, 9);
        Assert.Equal(trade.High, own.High, 9);
    });

    [Fact]
    public void Of_AnyBreakOffs_NeverExceedsTheTradesHighEndNorItsWidth() => Gen.Select(AnyTrade, AnyShares).Sample((trade, shares) =>
    {
        var own = KnotRange.Of(trade, shares);

        Assert.InRange(own.Low, 0, own.High);
        Assert.True(own.High <= trade.High);
        Assert.True(own.High / own.Low <= (trade.High / trade.Low) + Rounding);
    });

    // Once more of the same is seen, the range closes in on it, from wherever it stood.
    [Fact]
    public void Of_MoreOfTheSame_NarrowsAroundIt() =>
        Gen.Select(AnyTrade, Gen.Double[0.2, 0.8], Gen.Int[1, 40]).Sample((trade, between, count) =>
        {
            var seen = trade.Low + (between * (trade.High - trade.Low));
            var few = KnotRange.Of(trade, [.. Enumerable.Repeat(seen, count)]);
            var many = KnotRange.Of(trade, [.. Enumerable.Repeat(seen, 20 * count)]);

            Assert.InRange(seen, many.Low, many.High);
            if (few.High < trade.High && many.High < trade.High) // where the trade's high end cuts nothing off
            {
                Assert.True(many.High / many.Low < few.High / few.Low);
                Assert.True(Math.Abs(Math.Log(Middle(many) / seen)) <= Math.Abs(Math.Log(Middle(few) / seen)) + Rounding);
            }
        });

    [Fact]
    public void Of_WeakerKnots_NeverRaiseEitherEnd() =>
        Gen.Select(AnyTrade, Gen.Double[0.05, 1.5].Array[1, 20], Gen.Double[0.3, 1]).Sample((trade, shares, factor) =>
        {
            var own = KnotRange.Of(trade, shares);
            var weaker = KnotRange.Of(trade, [.. shares.Select(share => share * factor)]);

            Assert.True(weaker.Low <= own.Low + Rounding);
            Assert.True(weaker.High <= own.High + Rounding);
        });

    // Worked by hand: ln 0.5 and ln 0.8 lie 0.47000 apart about -0.45815; nine break-offs at 0.6 move the middle to
    // (-0.45815 + 9 × -0.51083)/10 = -0.50556; what is left of the half width 0.23500 is √(1/2 + 1/20) of it, 0.17428.
    [Fact]
    public void Of_NineBreakOffsAtSixTenths_IsAsWorkedByHand()
    {
        var own = KnotRange.Of(DoubleUniOnBraid, [.. Enumerable.Repeat(0.6, 9)]);

        Assert.Equal(Math.Exp(-0.50556 - 0.17428), own.Low, 4);
        Assert.Equal(Math.Exp(-0.50556 + 0.17428), own.High, 4);
    }

    [Fact]
    public void AsTied_FourBreakOffs_IsStillTheTradesKnot()
    {
        var knots = TradeKnowledge.BuiltIn;
        var (knot, braid) = (knots.Knots["double-uni"], knots.Lines["braid"]);
        CrewKnots After(int count) => new(Enumerable.Repeat(new PartedKnot(knot.Key, braid.Key, 0.6), count));

        Assert.Same(knot, After(CrewKnots.Enough - 1).AsTied(knot, braid));
        Assert.True(After(CrewKnots.Enough).AsTied(knot, braid).Efficiency[braid.Key].Low > knot.Efficiency[braid.Key].Low);
        Assert.Same(knot.Efficiency["nylon"], After(CrewKnots.Enough).AsTied(knot, braid).Efficiency["nylon"]);
    }

    private static double Middle(Spread<double> range) => Math.Sqrt(range.Low * range.High);
}
