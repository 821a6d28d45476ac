using System.Globalization;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Rigs for the line that is on a reel.</summary>
public sealed class ReelTests
{
    private const int Often = 500;


    [Fact]
    public void Plan_ForAnyReel_KeepsItsLineAndPassesTheChecker()
    {
        var planned = 0;

        Asks.AnyOnAReel.Sample(
            ask => Assert.All(Planned.All(ask), rig =>
            {
                Interlocked.Increment(ref planned);
                Assert.Equal(ask.Mainline, rig.Tied.Mainline);
                Assert.DoesNotContain(rig.Tied.Mainline.Material.Key, ask.Without);
                Assert.DoesNotContain(rig.Tied.Leader?.Line.Material.Key ?? "", ask.Without);
                Assert.Empty(Planned.FaultsOf(ask, rig));
                Assert.All(rig.Reasons, reason => Assert.False(string.IsNullOrWhiteSpace(reason.Why.ToString(CultureInfo.InvariantCulture))));
            }),
            iter: 4 * Often, print: Asks.Print);

        Assert.True(planned > Often / 10, $"{planned} rigs are too few to tell");
    }

    [Fact]
    public void Plan_ForTheLineThatSuits_IsThePlanWithoutIt() =>
        Asks.Any.Where(ask => Planned.Planner.Plan(ask).Plan is not null).Sample(
            ask =>
            {
                var plain = Planned.Planner.Plan(ask).Plan!.First;
                var reel = Planned.Planner.Plan(ask with { Mainline = plain.Tied.Mainline, Presentation = plain.Presentation }).Plan?.First;
                Assert.NotNull(reel);
                Assert.Equal(plain.Tied.Leader?.Line.Test.Newtons, reel.Tied.Leader?.Line.Test.Newtons);
                Assert.Equal(plain.Lure.Weight.Grams, reel.Lure.Weight.Grams);
                Assert.Equal(plain.Hook, reel.Hook);
            },
            iter: Often, print: Asks.Print);

    // A box says for itself what is on the reels.
    [Fact]
    public void Plan_FromABox_HeedsTheBoxAlone()
    {
        var box = new Tackle
        {
            Lines = [Of("braid", 10)],
            Leaders = [Of("fluorocarbon", 10)],
            Lures = [new(Planned.Trade.Presentations["jigging-spoon"], Mass.FromOunces(0.25), Planned.Trade.LureMaterials["lead"])],
        };

        var rig = Planned.Planner.Plan(Asks.For("walleye") with { Tackle = box, Mainline = Of("nylon", 4) }).Plan!.First;

        Assert.Equal("braid", rig.Tied.Mainline.Material.Key);
    }

    [Theory]
    [InlineData("yellow-perch", "braid", 30, FishSize.Typical, "too heavy for a small jig")]
    [InlineData("walleye", "nylon", 4, FishSize.Trophy, "too light for a jigging spoon")]
    [InlineData("walleye", "steel", 20, FishSize.Typical, "steel wire is for leaders, not for a reel")]
    [InlineData("walleye", "nylon", 6, FishSize.Trophy, "hold a trophy walleye")]
    public void Plan_ForALineThatWillNotDo_SaysWhyAndWhatSuits(string species, string material, double pounds, FishSize size, string obstacle)
    {
        var planning = Planned.Planner.Plan(Asks.For(species) with { Size = size, Mainline = Of(material, pounds) });

        Assert.Null(planning.Plan);
        Assert.Contains(obstacle, planning.Obstacle!.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_ForALineThatIsRuledOut_SaysSo()
    {
        var planning = Planned.Planner.Plan(Asks.For("walleye") with { Mainline = Of("nylon", 6), Without = new HashSet<string> { "nylon" } });

        Assert.Equal("nylon is on the reel and ruled out", planning.Obstacle!.ToString(CultureInfo.InvariantCulture));
    }

    private static LineChoice Of(string material, double pounds) => new(Planned.Trade.Lines[material], Force.FromPoundsForce(pounds));
}
