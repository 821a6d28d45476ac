using CrewBot.Core.Rigs;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

public sealed class WeakestLinkTests
{
    private static readonly Gen<Link> AnyLink = Gen.Select(Gen.Double[1, 200], Gen.Double[0.3, 1], Gen.Double[0, 0.5])
        .Select((strength, low, spread) => new Link("somewhere", Force.FromNewtons(strength), low, low + spread));

    [Theory]
    [PublishedRows("weakest_link")]
    public void Of_RigInTable_AgreesWithTable(PublishedRow row)
    {
        var weakest = WeakestLink.Of(Rig(row));

        row.Check(weakest.Low.PoundsForce);
        row.Check(weakest.High.PoundsForce); // single efficiencies: no spread
    }

    [Theory]
    [PublishedRows("drag_setting_25pct")]
    public void For_RigInTable_SetsAQuarter(PublishedRow row) =>
        row.Check(DragSetting.For(WeakestLink.Of(Rig(row))).Low.PoundsForce);

    [Theory]
    [PublishedRows("drag_setting_33pct")]
    public void For_RigInTable_SetsAThirdAtMost(PublishedRow row) =>
        row.Check(DragSetting.For(WeakestLink.Of(Rig(row))).High.PoundsForce);

    [Theory]
    [PublishedRows("customary_drag_fraction_of_weakest_link")]
    public void For_AnyRig_StaysWithinTheCustom(PublishedRow row)
    {
        var drag = DragSetting.For(new WeakestLink("leader knot", Force.FromNewtons(40), Force.FromNewtons(60)));

        row.Check(drag.Low.Newtons / 40);
        row.Check(drag.High.Newtons / 40);
    }

    // 10-lb braid whose join holds 50–80 % (double uni, braid to leader: commonly reported), 8-lb leader whose Palomar
    // holds 85–95 %: the join may go at 5 lb, and by 7.6 lb the leader has gone.
    [Fact]
    public void Of_KnotsThatVary_GivesTheRangeAndThePlace()
    {
        var weakest = WeakestLink.Of([Pounds("join", 10, 0.50, 0.80), Pounds("leader at the lure", 8, 0.85, 0.95)]);

        Assert.Equal("join", weakest.Place);
        Assert.Equal(5.0, weakest.Low.PoundsForce, 1e-9);
        Assert.Equal(7.6, weakest.High.PoundsForce, 1e-9);
    }

    // Every knot sees the whole load once: two knots of 85 % leave 85 %, not 72 %.
    [Fact]
    public void Of_KnotsInARow_DoNotMultiply()
    {
        var one = Pounds("upper knot", 10, 0.85, 0.85);

        Assert.Equal(8.5, WeakestLink.Of([one, one with { Place = "lower knot" }]).Low.PoundsForce, 1e-9);
    }

    [Fact]
    public void Of_OneMoreLink_IsNeverStronger() =>
        Gen.Select(AnyLink.List[1, 6], AnyLink).Sample((links, more) =>
        {
            var (before, after) = (WeakestLink.Of(links), WeakestLink.Of([.. links, more]));
            return after.Low.Newtons <= before.Low.Newtons
                && after.High.Newtons <= before.High.Newtons
                && after.Low.Newtons <= after.High.Newtons;
        });

    [Fact]
    public void SurelyBefore_RangesThatOverlap_IsNotSure()
    {
        var leader = Pounds("leader", 6, 0.85, 0.95); // 5.1–5.7 lb

        Assert.True(WeakestLink.SurelyBefore(leader, Pounds("strong join", 10, 0.80, 1.00)));
        Assert.False(WeakestLink.SurelyBefore(leader, Pounds("weak join", 10, 0.50, 0.80)));
        Assert.False(WeakestLink.SurelyBefore(leader, leader));
    }

    [Fact]
    public void SurelyBefore_BothWays_IsNeverTrue() =>
        Gen.Select(AnyLink, AnyLink).Sample((one, other) =>
            !(WeakestLink.SurelyBefore(one, other) && WeakestLink.SurelyBefore(other, one)));

    [Fact]
    public void Of_NoLinks_Throws() => Assert.Throws<ArgumentException>("links", () => WeakestLink.Of([]));

    [Theory]
    [InlineData(0, 0.8, 0.9, "Strength")]
    [InlineData(10, 0, 0.9, "EfficiencyLow")]
    [InlineData(10, 0.9, 0.8, "EfficiencyHigh")]
    [InlineData(10, 0.9, 2.1, "EfficiencyHigh")]
    [InlineData(10, double.NaN, 0.9, "EfficiencyLow")]
    public void Link_OutsideItsRange_Throws(double strength, double low, double high, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => Pounds("join", strength, low, high));

    private static Link Pounds(string place, double strength, double low, double high) =>
        new(place, Force.FromPoundsForce(strength), low, high);

    private static List<Link> Rig(PublishedRow row) =>
        [.. new[] { ("main_lb", "eta1"), ("leader_lb", "eta2"), ("wire_lb", "eta3") }
            .Where(part => row.Has(part.Item1))
            .Select(part => Pounds(part.Item1, row[part.Item1], row[part.Item2], row[part.Item2]))];
}
