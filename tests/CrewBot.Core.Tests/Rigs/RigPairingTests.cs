using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Lines that work together: common practice.</summary>
public sealed class RigPairingTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;
    private static readonly RigPlanner Planner = new(Knowledge);
    private static readonly RigPairing Pairing = new(Knowledge, Planner);

    [Fact]
    public void Plan_TwoLines_OneCallsAndTheOtherSitsBesideIt()
    {
        var pair = Pairing.Plan(Asks.For("walleye"), lines: 2)!;

        Assert.Equal("rattling-spoon", pair.Caller.Presentation.Key);
        Assert.Equal("set-bait", pair.Sitter!.Presentation.Key);
        Assert.Empty(pair.SetLines);
        Assert.InRange(pair.Spacing.Feet, 3, 10);
    }

    [Fact]
    public void Plan_OneLine_PlansTheOneThatThePlannerWould()
    {
        var pair = Pairing.Plan(Asks.For("walleye"), lines: 1)!;

        Assert.Equal(Planner.Plan(Asks.For("walleye")).Plan!.First.Presentation, pair.Caller.Presentation);
        Assert.Null(pair.Sitter);
        Assert.Empty(pair.SetLines);
    }

    [Theory]
    [InlineData(3, 1)]
    [InlineData(5, 3)]
    public void Plan_FurtherLines_BecomeSetLinesFartherOut(int lines, int set)
    {
        var pair = Pairing.Plan(Asks.For("northern-pike"), lines)!;

        Assert.Equal(set, pair.SetLines.Count);
        Assert.All(pair.SetLines, rig => Assert.True(rig.Presentation.SetLine));
        Assert.True(pair.SetSpacing.Meters > pair.Spacing.Meters);
    }

    [Fact]
    public void Plan_AnySpeciesAndMood_NeverSitsLouderThanItCalls() => Assert.All(Knowledge.Species, species =>
        Assert.All(Enum.GetValues<Mood>(), mood =>
        {
            var pair = Pairing.Plan(Asks.For(species.Key) with { Mood = mood }, lines: 2)!;

            Assert.NotNull(pair.Sitter);
            Assert.NotEqual(pair.Caller.Presentation.Key, pair.Sitter.Presentation.Key);
            Assert.True(pair.Sitter.Presentation.Loudness <= pair.Caller.Presentation.Loudness);
        }));

    [Fact]
    public void Plan_PresentationInTheQuestion_IsIgnored()
    {
        var (open, settled) = (Pairing.Plan(Asks.For("walleye"), 2)!, Pairing.Plan(Asks.For("walleye", "small-jig") with { Step = 3 }, 2)!);

        Assert.Equal(open.Caller.Presentation, settled.Caller.Presentation);
        Assert.Equal(open.Caller.Lure, settled.Caller.Lure);
    }

    [Fact]
    public void Plan_NothingCanBePlanned_GivesNull() => Assert.Null(
        Pairing.Plan(Asks.For("walleye") with { Without = new HashSet<string> { "braid", "nylon", "fluorocarbon" } }, 2));

    [Fact]
    public void Plan_NoLines_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>("lines", () => Pairing.Plan(Asks.For("walleye"), 0));

    [Fact]
    public void Plan_Spacing_KeepsBothHolesInView() =>
        Assert.True(Pairing.Plan(Asks.For("walleye"), 2)!.Spacing < Length.FromFeet(15));
}
