using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Jobs for the holes of a crew: common practice.</summary>
public sealed class RigSpreadTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;
    private static readonly RigPlanner Planner = new(Knowledge);
    private static readonly RigSpread Spread = new(new RigPairing(Knowledge, Planner), Planner);

    [Fact]
    public void ShareOut_SixHoles_CoversEveryJob()
    {
        var jobs = Spread.ShareOut(Asks.For("walleye"), holes: 6)!;

        Assert.Equal(
            [SpreadJob.Caller, SpreadJob.Sitter, SpreadJob.DepthStep, SpreadJob.SetLine, SpreadJob.Sitter, SpreadJob.DepthStep],
            jobs.Select(job => job.Job));
    }

    [Fact]
    public void ShareOut_DepthSteps_GoToEitherSide()
    {
        var ask = Asks.For("walleye");
        var steps = Spread.ShareOut(ask, holes: 6)!.Where(job => job.Job == SpreadJob.DepthStep).Select(job => job.Depth.Meters).ToList();

        Assert.True(steps[0] > ask.Depth.Meters);
        Assert.True(steps[1] < ask.Depth.Meters);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(40)]
    public void ShareOut_AnyCrew_GivesEachHoleOneJob(int holes)
    {
        var jobs = Spread.ShareOut(Asks.For("northern-pike"), holes)!;

        Assert.Equal(holes, jobs.Count);
        Assert.Equal(SpreadJob.Caller, jobs[0].Job);
    }

    [Fact]
    public void ShareOut_NothingCanBePlanned_GivesNull() => Assert.Null(
        Spread.ShareOut(Asks.For("northern-pike") with { Without = new HashSet<string> { "steel", "titanium" } }, 4));

    [Fact]
    public void AfterHit_OneHoleReports_SittersAndDepthStepsFollowIt()
    {
        var before = Spread.ShareOut(Asks.For("walleye"), holes: 6)!;

        var after = RigSpread.AfterHit(before, hit: 2);

        Assert.Equal(before[2], after[2]);
        Assert.Equal(before[0], after[0]); // the caller keeps calling
        Assert.Equal(before[3], after[3]); // the set line waits
        Assert.All([after[1], after[4], after[5]], job =>
        {
            Assert.Equal(before[2].Rig, job.Rig);
            Assert.Equal(before[2].Depth, job.Depth);
        });
    }
}
