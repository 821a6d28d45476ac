using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Rigs that someone has tied, each with one thing wrong: common practice.</summary>
public sealed class RigCheckerTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;

    [Fact]
    public void Check_SoundRig_HasNoFaults() => Assert.Empty(Faults(Sound, Walleye));

    // An 8-lb leader on 6-lb braid is everyday: braid holds more than its label, so which goes first is not sure.
    [Fact]
    public void Check_EightPoundLeaderOnSixPoundBraid_IsNoFault() =>
        Assert.Empty(Faults(Sound with { Mainline = Line("braid", 6), Leader = Leader("fluorocarbon", 8) }, Walleye));

    [Fact]
    public void Check_FluorocarbonForPike_WantsABiteLeader() =>
        AssertOne(RigFaultKind.NoBiteLeader, Strong, Against("northern-pike"), "cuts fluorocarbon of any test");

    [Fact]
    public void Check_PikeStraightOnBraid_NamesTheBraidAsCut() =>
        Assert.Contains("cuts braid", Text(Faults(Strong with { Leader = null, Join = null }, Against("northern-pike"))[0].What), StringComparison.Ordinal);

    [Fact]
    public void Check_WireForPike_IsNoFault() => Assert.Empty(Faults(
        Strong with
        {
            Leader = Leader("steel", 27),
            LureKnot = Knowledge.Knots["crimp"],
            Join = Knowledge.Knots["palomar"],
            Hardware = [Knowledge.Hardware["swivel-10"]],
        },
        Against("northern-pike")));

    // A trophy laker of 11.4 kg is reckoned to pull half of that, 12.6 lb; 6-lb leader is long gone by then.
    [Fact]
    public void Check_LineTooWeakForTheFish_SaysWhereItParts() =>
        AssertOne(RigFaultKind.TooWeakForFish, Sound, Against("lake-trout", FishSize.Trophy), "may part at");

    [Fact]
    public void Check_HookThatOpensFirst_SaysSo() => AssertOne(
        RigFaultKind.HookTooLight, Strong with { Hook = Knowledge.Hooks["hook-12"] }, Against("lake-trout", FishSize.Trophy), "opens at");

    // 4-lb nylon holds 4.2 lb at the very best, a 12-lb leader 9 lb at worst.
    [Fact]
    public void Check_LeaderThatSurelyOutlastsTheMainline_SaysTheWholeLeaderIsLost() => AssertOne(
        RigFaultKind.MainlinePartsFirst,
        Sound with { Mainline = Line("nylon", 4), Leader = Leader("fluorocarbon", 12) },
        Against("yellow-perch"),
        "swims off with the whole leader");

    [Fact]
    public void Check_SwivelWeakerThanTheLine_SaysSo() => AssertOne(
        RigFaultKind.HardwareWeaker, Strong with { Hardware = [Knowledge.Hardware["swivel-14"]] }, Against("lake-trout"), "is rated");

    [Fact]
    public void Check_KnotThatIsNotMadeForTheLine_SaysSo() => AssertOne(
        RigFaultKind.KnotUnsuited, Sound with { LureKnot = Knowledge.Knots["crimp"] }, Walleye, "is not a knot for fluorocarbon");

    [Fact]
    public void Check_LureTooLightForTheDepth_SaysHowLongItTakes() => AssertOne(
        RigFaultKind.TooLightForDepth, Sound with { Lure = Lure("small-jig", 1.0 / 128) }, Walleye with { Depth = Length.FromFeet(60) }, "takes more than");

    [Fact]
    public void Check_LureTooLightForTheCurrent_SaysItDriftsOff() => AssertOne(
        RigFaultKind.TooLightForCurrent,
        Sound with { Lure = Lure("small-jig", 1.0 / 8) },
        Walleye with { Depth = Length.FromFeet(20), Current = Speed.FromMetersPerSecond(0.3) },
        "leans more than");

    [Theory]
    [InlineData("walleye", true)]
    [InlineData("yellow-perch", true)]
    [InlineData("burbot", false)]
    public void Check_BraidToTheLure_IsAFaultForFishThatMind(string species, bool minds)
    {
        var faults = Faults(Sound with { Leader = null, Join = null }, Against(species));

        Assert.Equal(minds ? [RigFaultKind.BraidToLure] : [], faults.Select(fault => fault.Kind));
    }

    [Fact]
    public void Check_SpoonWithoutASwivel_SaysItTwists() =>
        AssertOne(RigFaultKind.NoSwivel, Sound with { Lure = Lure("jigging-spoon", 1.0 / 4) }, Walleye, "twists line");

    [Fact]
    public void Check_SeveralFaults_StandWorstFirst()
    {
        var bad = new TiedRig
        {
            Mainline = Line("braid", 4),
            LureKnot = Knowledge.Knots["crimp"],
            Hardware = [Knowledge.Hardware["split-ring-0"]],
            Hook = Knowledge.Hooks["hook-16"],
            Lure = Lure("jigging-spoon", 1.0 / 32),
        };
        var kinds = Faults(bad, Against("northern-pike", FishSize.Trophy) with { Depth = Length.FromFeet(60), Current = Speed.FromMetersPerSecond(0.3) })
            .Select(fault => fault.Kind).ToList();

        Assert.Equal(
            [
                RigFaultKind.NoBiteLeader, RigFaultKind.TooWeakForFish, RigFaultKind.HookTooLight, RigFaultKind.KnotUnsuited,
                RigFaultKind.TooLightForDepth, RigFaultKind.TooLightForCurrent, RigFaultKind.NoSwivel,
            ],
            kinds);
    }

    [Fact]
    public void Check_NothingSaidOfFishOrWater_JudgesOnlyWhatIsTied() =>
        Assert.Empty(Faults(Sound with { Leader = null, Join = null }, new RigSituation { Water = Temperature.FromDegreesCelsius(4) }));

    // Where it breaks decides what trails in the fish.
    [Fact]
    public void Check_LeaderWeakestAtTheLure_LosesTheLureAlone()
    {
        var verdict = RigChecker.Check(Sound with { Mainline = Line("braid", 20), Join = Knowledge.Knots["fg"] }, Walleye);

        Assert.Equal(RigStrength.LureKnot, verdict.Weakest.Place);
        Assert.Equal("the lure goes, the line stays whole", verdict.Lost);
    }

    [Fact]
    public void Check_JoinWeakest_LosesTheLeaderButKeepsTheMainlineWhole()
    {
        var verdict = RigChecker.Check(Sound with { Leader = Leader("fluorocarbon", 8) }, Walleye);

        Assert.Equal(RigStrength.JoinSide(Line("braid", 6)), verdict.Weakest.Place);
        Assert.Equal("leader and lure go, the mainline stays whole", verdict.Lost);
    }

    [Fact]
    public void Check_HookWeakest_LosesOnlyTheFish()
    {
        var verdict = RigChecker.Check(Strong with { Hook = Knowledge.Hooks["hook-16"] }, Against("yellow-perch"));

        Assert.Equal(RigStrength.HookBending, verdict.Weakest.Place);
        Assert.Equal("the fish goes, nothing else", verdict.Lost);
    }

    [Fact]
    public void Check_AnyRig_SetsTheDragFromTheWeakestLink()
    {
        var verdict = RigChecker.Check(Sound, Walleye);

        Assert.Equal(3, verdict.Weakest.Low.PoundsForce, 1e-6); // 6-lb braid, half of it left in a double uni at worst
        Assert.Equal(0.75, verdict.Drag.Low.PoundsForce, 1e-6);
        Assert.Equal(0.99, verdict.Drag.High.PoundsForce, 1e-6);
    }

    private static RigSituation Walleye => Against("walleye");

    private static TiedRig Sound => new()
    {
        Mainline = Line("braid", 6),
        Leader = Leader("fluorocarbon", 6),
        Join = Knowledge.Knots["double-uni"],
        LureKnot = Knowledge.Knots["palomar"],
    };

    private static TiedRig Strong => Sound with { Mainline = Line("braid", 30), Leader = Leader("fluorocarbon", 25), Join = Knowledge.Knots["fg"] };

    private static RigSituation Against(string species, FishSize size = FishSize.Typical) => new()
    {
        Species = Knowledge.Species[species],
        Size = size,
        Water = Temperature.FromDegreesCelsius(4),
    };

    private static LineChoice Line(string material, double pounds) => new(Knowledge.Lines[material], Force.FromPoundsForce(pounds));

    private static Leader Leader(string material, double pounds) => new(Line(material, pounds), Length.FromFeet(2));

    private static Lure Lure(string presentation, double ounces) =>
        new(Knowledge.Presentations[presentation], Mass.FromOunces(ounces), Knowledge.LureMaterials["lead"]);

    private static IReadOnlyList<RigFault> Faults(TiedRig rig, RigSituation situation) => RigChecker.Check(rig, situation).Faults;

    private static void AssertOne(RigFaultKind kind, TiedRig rig, RigSituation situation, string says)
    {
        var fault = Assert.Single(Faults(rig, situation));
        Assert.Equal(kind, fault.Kind);
        Assert.Contains(says, Text(fault.What), StringComparison.Ordinal);
        Assert.EndsWith(".", Text(fault.Fix), StringComparison.Ordinal);
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
