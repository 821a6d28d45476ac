using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;
using static CrewBot.Core.Tests.Rigs.Planned;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What a person who takes crews onto the ice would tie on: common practice, no source.</summary>
public sealed class CommonRigsTests
{
    // Passive all-round set bait for a mid-size fish: 6-lb braid, 6–8-lb fluorocarbon leader of 2–3 ft, split shot,
    // hook 2 to 6. Common practice, no source.
    [Theory]
    [InlineData(Mood.Negative)]
    [InlineData(Mood.Neutral)]
    public void Plan_SetBaitForAMidSizeFish_IsTheAllRoundPassiveRig(Mood mood)
    {
        var rig = First(Asks.For("walleye", "set-bait") with { Mood = mood });

        AssertLines(rig, "braid", 6, 6, "fluorocarbon", 6, 8);
        Assert.InRange(rig.Tied.Leader!.Length.Feet, 2, 3);
        Assert.Equal("split shot", rig.Presentation.Body);
        Assert.InRange(rig.Hook.Rank, HookSize.Parse("6").Rank, HookSize.Parse("2").Rank);
        Assert.NotNull(rig.Bait);
    }

    // Yellow perch, set bait or small jig: about 4-lb braid and a 4-lb leader. Common practice, no source.
    [Theory]
    [InlineData(Mood.Negative, "set-bait")]
    [InlineData(Mood.Neutral, "small-jig")]
    [InlineData(Mood.Positive, "small-jig")]
    public void Plan_YellowPerch_IsFinesseOnFourPound(Mood mood, string presentation)
    {
        var rig = First(Asks.For("yellow-perch") with { Mood = mood });

        Assert.Equal(presentation, rig.Presentation.Key);
        AssertLines(rig, "braid", 4, 4, "fluorocarbon", 4, 4);
    }

    // Panfish or small stocked trout, jig with plastic: 4-lb braid, about 4-lb fluorocarbon. Common practice, no source.
    [Theory]
    [InlineData("bluegill", FishSize.Typical)]
    [InlineData("black-crappie", FishSize.Typical)]
    [InlineData("rainbow-trout", FishSize.Small)]
    [InlineData("brook-trout", FishSize.Small)]
    public void Plan_JigWithPlasticForPanfishOrSmallTrout_IsOnFourPound(string species, FishSize size)
    {
        var rig = First(Asks.For(species, "small-jig") with { Size = size, Bait = Trade.Baits["soft-minnow"] });

        AssertLines(rig, "braid", 4, 4, "fluorocarbon", 4, 4);
        Assert.Equal("soft-minnow", rig.Bait!.Key);
    }

    // Walleye or stocked trout, jigging spoon: about 10-lb braid, 8–12-lb fluorocarbon. Common practice, no source.
    [Theory]
    [InlineData("walleye")]
    [InlineData("rainbow-trout")]
    [InlineData("brown-trout")]
    public void Plan_JiggingSpoonForAMidSizeFish_IsOnTenPound(string species) =>
        AssertLines(First(Asks.For(species, "jigging-spoon")), "braid", 8, 12, "fluorocarbon", 8, 12);

    // Walleye, rattle bait: a small size on the mid rod, line a step up from the spoon's at most. Common practice, no source.
    [Theory]
    [InlineData(Mood.Neutral)]
    [InlineData(Mood.Positive)]
    public void Plan_RattleBaitForWalleye_IsASmallOneOnTheMidRod(Mood mood)
    {
        var rig = First(Asks.For("walleye", "rattle-bait") with { Mood = mood });
        var spoon = First(Asks.For("walleye", "jigging-spoon") with { Mood = mood });

        Assert.True(rig.Lure.Weight.Ounces <= 0.5);
        Assert.True(rig.LureLength.Inches <= 2.5);
        Assert.InRange(StepOf(rig) - StepOf(spoon), 0, 1);
    }

    // Lake trout, rattle bait or large soft body: 20–30-lb mainline, 15–25-lb leader. Common practice, no source.
    [Theory]
    [InlineData("rattle-bait")]
    [InlineData("large-soft-body")]
    public void Plan_LakeTrout_IsOnTwentyToThirtyPound(string presentation) =>
        AssertLines(First(Asks.For("lake-trout", presentation)), "braid", 20, 30, "fluorocarbon", 15, 25);

    // Pike, jigged: 20–30-lb mainline and wire. Common practice, no source.
    [Theory]
    [InlineData("large-soft-body")]
    [InlineData("jigging-spoon")]
    [InlineData("rattle-bait")]
    public void Plan_PikeJigged_IsOnTwentyToThirtyPoundAndWire(string presentation)
    {
        var rig = First(Asks.For("northern-pike", presentation));

        Assert.InRange(rig.Tied.Mainline.Test.PoundsForce, 20, 30);
        Assert.Equal(LineUse.Bite, rig.Tied.Leader!.Line.Material.Use);
    }

    // Big pike on the bottom: a dead bait, two trebles on wire, held level. Common practice, no source.
    [Fact]
    public void Plan_BigPikeOnTheBottom_IsADeadBaitHeldLevelOnTwoTrebles()
    {
        var rig = First(Asks.For("northern-pike") with { Mood = Mood.Negative, Size = FishSize.Trophy });

        Assert.Equal("dead-bait", rig.Presentation.Key);
        Assert.Equal(2, rig.Presentation.Trebles);
        Assert.Equal(LineUse.Bite, rig.Tied.Leader!.Line.Material.Use);
        Assert.Equal(BaitKind.DeadFish, rig.Bait!.Kind);
        Assert.Equal(0, rig.Height.Meters);
        Assert.Contains("level", rig.Presentation.Work[Mood.Negative], StringComparison.Ordinal);
        Assert.True(TwoTrebleRig.Suits(rig.LureLength));
    }

    // Big walleye or a long minnow: jig, line, leader and hook each a step up from the panfish set. Common practice, no source.
    [Theory]
    [InlineData("small-jig")]
    [InlineData("set-bait")]
    public void Plan_BigWalleye_IsAStepUpFromThePanfishSetInEveryPart(string presentation)
    {
        var depth = Length.FromFeet(12);
        var big = First(Asks.For("walleye", presentation) with { Size = FishSize.Large, Depth = depth });
        var panfish = First(Asks.For("yellow-perch", presentation) with { Depth = depth });

        Assert.True(big.Lure.Weight.Grams > panfish.Lure.Weight.Grams);
        Assert.True(big.Tied.Mainline.Test.Newtons > panfish.Tied.Mainline.Test.Newtons);
        Assert.True(big.Tied.Leader!.Line.Test.Newtons > panfish.Tied.Leader!.Line.Test.Newtons);
        Assert.True(big.Hook > panfish.Hook);
    }

    private static int StepOf(Rig rig) => Trade.Outfits.ToList().IndexOf(rig.Outfit);

    private static void AssertLines(
        Rig rig, string mainline, double leastMain, double mostMain, string leader, double leastLeader, double mostLeader)
    {
        Assert.Equal(mainline, rig.Tied.Mainline.Material.Key);
        Assert.InRange(rig.Tied.Mainline.Test.PoundsForce, leastMain - 1e-6, mostMain + 1e-6);
        Assert.Equal(leader, rig.Tied.Leader!.Line.Material.Key);
        Assert.InRange(rig.Tied.Leader.Line.Test.PoundsForce, leastLeader - 1e-6, mostLeader + 1e-6);
    }
}
