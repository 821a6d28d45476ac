using CrewBot.Core.Knowledge;
using static CrewBot.Core.Tests.Rigs.Planned;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Mainline, leader, wire and the join between them.</summary>
public sealed class RigLinesTests
{
    // Tied on the ice the default join is the double uni; a stronger one where it would be the weak point.
    [Fact]
    public void Plan_OrdinaryFish_JoinsWithTheDoubleUni() =>
        Assert.Equal("double-uni", First(Asks.For("walleye", "small-jig")).Tied.Join!.Key);

    [Fact]
    public void Plan_WithoutBraid_IsOnSingleStrandStraightToTheLure()
    {
        var rig = First(Asks.For("yellow-perch", "small-jig") with { Without = new HashSet<string> { "braid" } });

        Assert.Equal("fluorocarbon", rig.Tied.Mainline.Material.Key);
        Assert.Null(rig.Tied.Leader);
        Assert.Contains("braid is ruled out", Text(rig.Reasons.First(reason => reason.About == "mainline").Why), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("northern-pike")]
    [InlineData("muskellunge")]
    public void Plan_SpeciesThatCutsLine_GetsABiteLeaderInEveryRig(string species)
    {
        var plan = Planner.Plan(Asks.For(species)).Plan!;

        Assert.All([plan.First, .. plan.Alternatives], rig => Assert.Equal(LineUse.Bite, rig.Tied.Leader!.Line.Material.Use));
    }

    [Fact]
    public void Plan_SpeciesThatCutsLineWithoutWire_SaysWhatStandsInTheWay()
    {
        var planning = Planner.Plan(Asks.For("northern-pike") with { Without = new HashSet<string> { "steel", "titanium" } });

        Assert.Null(planning.Plan);
        Assert.Contains("wire is ruled out", planning.Obstacle!.ToString(), StringComparison.Ordinal);
    }

    // Wire costs bites: a pike that is only about does not put it on the walleye rig, but the risk is said and wire offered.
    [Fact]
    public void Plan_PikeOnlyAlsoThere_StatesTheRiskAndOffersWire()
    {
        var plan = Planner.Plan(Asks.For("walleye") with { AlsoThere = [Trade.Species["northern-pike"]] }).Plan!;

        Assert.NotEqual(LineUse.Bite, plan.First.Tied.Leader!.Line.Material.Use);
        Assert.Contains(plan.First.Cautions, caution => Text(caution.Text).Contains("northern pike will cut", StringComparison.Ordinal));
        Assert.Equal(LineUse.Bite, plan.Alternatives[0].Tied.Leader!.Line.Material.Use);
        Assert.Equal(plan.First.Presentation, plan.Alternatives[0].Presentation);
        Assert.Contains(plan.Alternatives[0].Cautions, caution => Text(caution.Text).Contains("Wire costs you", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_NothingWithTeethAbout_SaysNothingOfWire()
    {
        var plan = Planner.Plan(Asks.For("walleye") with { AlsoThere = [Trade.Species["yellow-perch"]] }).Plan!;

        Assert.DoesNotContain(plan.First.Cautions, caution => Text(caution.Text).Contains("ire", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Alternatives, rig => rig.Tied.Leader?.Line.Material.Use == LineUse.Bite);
    }

    // The lightest wire outlasts 4-lb braid: the rod goes a step up, or a fish swims off with line and wire.
    [Fact]
    public void Plan_WireForPanfish_GoesOnALineThatOutlastsIt()
    {
        var plan = Planner.Plan(Asks.For("yellow-perch") with { AlsoThere = [Trade.Species["northern-pike"]] }).Plan!;

        var wired = plan.Alternatives[0];
        Assert.Equal(6, wired.Tied.Mainline.Test.PoundsForce, 1e-6);
        Assert.Contains("swims off", Text(wired.Reasons.First(reason => reason.About == "rod").Why), StringComparison.Ordinal);
    }
}
