using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What a person who takes crews onto the ice would tie on: common practice, no source.</summary>
public sealed class RigPlannerTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;
    private static readonly RigPlanner Planner = new(Knowledge);

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
        var rig = First(Asks.For(species, "small-jig") with { Size = size, Bait = Knowledge.Baits["soft-minnow"] });

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

    // Negative fish at depth: tungsten before lead, smaller body, still or barely moving; in a positive mood a bigger
    // lead head is fine. Common practice, no source.
    [Theory]
    [InlineData("yellow-perch")]
    [InlineData("walleye")]
    [InlineData("lake-whitefish")]
    public void Plan_NegativeFishAtDepth_GetSmallTungstenHeldStill(string species)
    {
        var deep = Asks.For(species, "small-jig") with { Depth = Length.FromFeet(40) };
        var (negative, positive) = (First(deep with { Mood = Mood.Negative }), First(deep with { Mood = Mood.Positive }));

        Assert.Equal("tungsten", negative.Lure.Material.Key);
        Assert.Equal("lead", positive.Lure.Material.Key);
        Assert.True(negative.Numbers.LureDiameter.Meters < positive.Numbers.LureDiameter.Meters);
        Assert.True(negative.LureLength.Meters <= positive.LureLength.Meters);
        Assert.Contains("still", negative.Presentation.Work[Mood.Negative], StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_NegativeFishAtDepthWithoutTungsten_GetsLeadRatherThanNothing() => Assert.Equal(
        "lead",
        First(Asks.For("walleye", "small-jig") with { Mood = Mood.Negative, Without = new HashSet<string> { "tungsten" } }).Lure.Material.Key);

    // A jigging spoon is not the first choice for panfish: common practice.
    [Fact]
    public void Plan_Panfish_DoesNotStartWithASpoon() => Assert.All(
        Knowledge.Species.Where(species => species.Class == SizeClass.Panfish),
        species => Assert.All(Enum.GetValues<Mood>(), mood =>
            Assert.NotEqual("jigging-spoon", First(Asks.For(species.Key) with { Mood = mood }).Presentation.Key)));

    // Calmer fish are never shown something louder: common practice.
    [Fact]
    public void Plan_FirstChoice_GetsNoLouderAsFishGetCalmer() => Assert.All(Knowledge.Species, species =>
    {
        var loudness = Enum.GetValues<Mood>()
            .Select(mood => First(Asks.For(species.Key) with { Mood = mood }).Presentation.Loudness).ToList();

        Assert.Equal(loudness.Order(), loudness);
    });

    [Fact]
    public void Plan_EverySpeciesInEveryMoodAndSize_HasAPlan() => Assert.All(Knowledge.Species, species =>
        Assert.All(Enum.GetValues<Mood>(), mood => Assert.All(Enum.GetValues<FishSize>(), size =>
            Assert.NotNull(Planner.Plan(Asks.For(species.Key) with { Mood = mood, Size = size }).Plan))));

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
        var plan = Planner.Plan(Asks.For("walleye") with { AlsoThere = [Knowledge.Species["northern-pike"]] }).Plan!;

        Assert.NotEqual(LineUse.Bite, plan.First.Tied.Leader!.Line.Material.Use);
        Assert.Contains(plan.First.Cautions, caution => Text(caution.Text).Contains("northern pike will cut", StringComparison.Ordinal));
        Assert.Equal(LineUse.Bite, plan.Alternatives[0].Tied.Leader!.Line.Material.Use);
        Assert.Equal(plan.First.Presentation, plan.Alternatives[0].Presentation);
        Assert.Contains(plan.Alternatives[0].Cautions, caution => Text(caution.Text).Contains("Wire costs you", StringComparison.Ordinal));
    }

    [Fact]
    public void Plan_NothingWithTeethAbout_SaysNothingOfWire()
    {
        var plan = Planner.Plan(Asks.For("walleye") with { AlsoThere = [Knowledge.Species["yellow-perch"]] }).Plan!;

        Assert.DoesNotContain(plan.First.Cautions, caution => Text(caution.Text).Contains("ire", StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Alternatives, rig => rig.Tied.Leader?.Line.Material.Use == LineUse.Bite);
    }

    // The lightest wire outlasts 4-lb braid: the rod goes a step up, or a fish swims off with line and wire.
    [Fact]
    public void Plan_WireForPanfish_GoesOnALineThatOutlastsIt()
    {
        var plan = Planner.Plan(Asks.For("yellow-perch") with { AlsoThere = [Knowledge.Species["northern-pike"]] }).Plan!;

        var wired = plan.Alternatives[0];
        Assert.Equal(6, wired.Tied.Mainline.Test.PoundsForce, 1e-6);
        Assert.Contains("swims off", Text(wired.Reasons.First(reason => reason.About == "rod").Why), StringComparison.Ordinal);
    }

    // Braid is the everyday mainline, in the open too; below freezing it takes care or another line: common practice.
    [Fact]
    public void Plan_BraidInTheOpenBelowFreezing_SaysWhatFrostDoesAndOffersSingleStrand()
    {
        var rig = First(Asks.For("walleye") with { Air = Temperature.FromDegreesCelsius(-12) });

        Assert.Equal("braid", rig.Tied.Mainline.Material.Key);
        var caution = Text(Assert.Single(rig.Cautions, IsAboutFrost).Text);
        Assert.Contains("freezes", caution, StringComparison.Ordinal);
        Assert.Contains("strip the ice", caution, StringComparison.Ordinal);
        Assert.Contains("fluorocarbon or nylon", caution, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Place.Shelter, -12.0)]
    [InlineData(Place.Open, 1.0)]
    [InlineData(Place.Open, null)]
    public void Plan_BraidWhereNothingFreezes_SaysNothingOfFrost(Place place, double? celsius) => Assert.DoesNotContain(
        First(Asks.For("walleye") with
        {
            Place = place,
            Air = celsius is { } air ? Temperature.FromDegreesCelsius(air) : null,
        }).Cautions,
        IsAboutFrost);

    [Fact]
    public void Plan_WithoutBraid_IsOnSingleStrandStraightToTheLure()
    {
        var rig = First(Asks.For("yellow-perch", "small-jig") with { Without = new HashSet<string> { "braid" } });

        Assert.Equal("fluorocarbon", rig.Tied.Mainline.Material.Key);
        Assert.Null(rig.Tied.Leader);
        Assert.Contains("braid is ruled out", Text(rig.Reasons.First(reason => reason.About == "mainline").Why), StringComparison.Ordinal);
    }

    // Tied on the ice the default join is the double uni; a stronger one where it would be the weak point.
    [Fact]
    public void Plan_OrdinaryFish_JoinsWithTheDoubleUni() =>
        Assert.Equal("double-uni", First(Asks.For("walleye", "small-jig")).Tied.Join!.Key);

    [Fact]
    public void Plan_LighterThanUsual_SaysThatItWasAskedFor()
    {
        var usual = First(Asks.For("walleye", "jigging-spoon"));
        var rig = First(Asks.For("walleye", "jigging-spoon") with { Step = -1 });

        Assert.True(rig.Lure.Weight.Grams < usual.Lure.Weight.Grams);
        Assert.EndsWith("as you asked.", Text(rig.Reasons.First(reason => reason.About == "weight").Why), StringComparison.Ordinal);
    }

    // A lure that is lighter by wish still carries a hook that holds the fish.
    [Fact]
    public void Plan_LighterThanUsual_StopsWhereTheHookWouldBendOpen()
    {
        var rig = First(Asks.For("lake-trout", "swimming-jig") with { Size = FishSize.Trophy, Step = -5 });

        Assert.True(rig.Tied.Hook!.Opens.High >= WorkingPull.Of(Knowledge.Species["lake-trout"].Weights.Trophy));
        Assert.True(rig.IsLightest);
        Assert.Contains("bends open", Text(rig.Reasons.First(reason => reason.About == "weight").Why), StringComparison.Ordinal);
    }

    // Eight feet off bottom is right for lakers in 60 ft and out of the water in a 2-ft bay.
    [Theory]
    [InlineData("lake-trout")]
    [InlineData("rainbow-trout")]
    public void Plan_ShallowWater_KeepsTheLureInTheWater(string species)
    {
        var ask = Asks.For(species) with { Depth = Length.FromFeet(2), Mood = Mood.Positive };

        Assert.True(First(ask).Height.Meters < ask.Depth.Meters);
    }

    [Fact]
    public void Plan_NoWaterNamed_LeavesEveryRuleThatTouchesTheRigOpen() => Assert.Equal(
        ["lines", "barbs", "live bait", "lead"], First(Asks.For("walleye", "set-bait")).OpenRules);

    [Fact]
    public void Plan_RulesKnownInFull_LeavesNoneOpen() => Assert.Empty(
        First(Asks.For("walleye", "set-bait") with
        {
            Rules = Asks.Water() with
            {
                Lines = 2,
                HooksPerLine = 3,
                TreblesPerLine = 1,
                BarblessOnly = false,
                LeadBanned = false,
                Baits = Enum.GetValues<BaitKind>(),
            },
        }).OpenRules);

    // Deeper than agency advice of 25 ft, a walleye brought up is likely to be hurt: the knowledge names the source.
    [Theory]
    [InlineData(24.9, false)]
    [InlineData(25.1, true)]
    public void Plan_BelowTheBarotraumaDepth_WarnsOfIt(double feet, bool warned) => Assert.Equal(
        warned,
        First(Asks.For("walleye") with { Depth = Length.FromFeet(feet) }).Cautions
            .Any(caution => Text(caution.Text).Contains("can't go back down alive", StringComparison.Ordinal)));

    [Fact]
    public void Plan_FishWiderThanTheHole_SaysToDrillAWiderOne() => Assert.Contains(
        First(Asks.For("muskellunge") with { Size = FishSize.Trophy, Hole = Length.FromInches(5) }).Cautions,
        caution => Text(caution.Text).Contains("drill a wider hole", StringComparison.Ordinal));

    private static bool IsAboutFrost(Caution caution) => Text(caution.Trigger).Contains("in the open", StringComparison.Ordinal);

    private static Rig First(RigAsk ask) => Planner.Plan(ask).Plan!.First;

    private static int StepOf(Rig rig) => Knowledge.Outfits.ToList().IndexOf(rig.Outfit);

    private static string Text(FormattableString text) => FormattableString.Invariant(text);

    private static void AssertLines(
        Rig rig, string mainline, double leastMain, double mostMain, string leader, double leastLeader, double mostLeader)
    {
        Assert.Equal(mainline, rig.Tied.Mainline.Material.Key);
        Assert.InRange(rig.Tied.Mainline.Test.PoundsForce, leastMain - 1e-6, mostMain + 1e-6);
        Assert.Equal(leader, rig.Tied.Leader!.Line.Material.Key);
        Assert.InRange(rig.Tied.Leader.Line.Test.PoundsForce, leastLeader - 1e-6, mostLeader + 1e-6);
    }
}
