using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;
using static CrewBot.Core.Tests.Rigs.Planned;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What a plan warns of, and which rules of the water it leaves to be looked up.</summary>
public sealed class RigCautionTests
{
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

    private static bool IsAboutFrost(Caution caution) => Text(caution.Trigger).Contains("in the open", StringComparison.Ordinal);
}
