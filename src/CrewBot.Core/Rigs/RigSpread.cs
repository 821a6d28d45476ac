using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Gives every hole of a crew a job, so that together they cover mood, depth and presentation.</summary>
/// <param name="pairing">Plans the lines that work together.</param>
/// <param name="planner">Plans single lines.</param>
public sealed class RigSpread(RigPairing pairing, RigPlanner planner)
{
    private const double DepthStepShare = 0.25;

    // One caller to a group, then quiet lines, then depths to either side, then what waits by itself: common practice.
    private static readonly SpreadJob[] Order =
        [SpreadJob.Caller, SpreadJob.Sitter, SpreadJob.DepthStep, SpreadJob.SetLine, SpreadJob.Sitter, SpreadJob.DepthStep];

    /// <summary>Shares out the jobs.</summary>
    /// <param name="ask">What is asked.</param>
    /// <param name="holes">How many holes are fished, 1 or more.</param>
    /// <returns>One job a hole; null when nothing can be planned.</returns>
    public IReadOnlyList<HoleJob>? ShareOut(RigAsk ask, int holes)
    {
        if (pairing.Plan(ask, lines: 3) is not { } lines)
        {
            return null;
        }

        var jobs = new List<HoleJob>(holes);
        for (var hole = 0; hole < holes; hole++)
        {
            jobs.Add(JobFor(ask, lines, Order[hole % Order.Length], deeper: hole % (2 * Order.Length) == 2));
        }

        return jobs;
    }

    /// <summary>Offers the others a change after one hole reports a hit.</summary>
    /// <param name="jobs">What the holes fish now.</param>
    /// <param name="hit">Index of the hole that had the hit.</param>
    /// <returns>The new jobs: the caller keeps calling, the hole that hit stays, every sitter and depth step follows it.</returns>
    public static IReadOnlyList<HoleJob> AfterHit(IReadOnlyList<HoleJob> jobs, int hit)
    {
        var lucky = jobs[hit];
        return
        [
            .. jobs.Select((job, index) => index == hit || job.Job is SpreadJob.Caller or SpreadJob.SetLine
                ? job
                : job with { Rig = lucky.Rig, Depth = lucky.Depth }),
        ];
    }

    private HoleJob JobFor(RigAsk ask, RigPair lines, SpreadJob job, bool deeper)
    {
        switch (job)
        {
            case SpreadJob.Sitter when lines.Sitter is { } sitter:
                return new HoleJob(job, sitter, ask.Depth);
            case SpreadJob.SetLine when lines.SetLines is [var set, ..]:
                return new HoleJob(job, set, ask.Depth);
            case SpreadJob.DepthStep:
                var band = ask.Species.Depth;
                var stepped = Length.FromMeters(Math.Clamp(
                    ask.Depth.Meters * (deeper ? 1 + DepthStepShare : 1 - DepthStepShare), 1, Math.Max(band.To.Meters, ask.Depth.Meters)));
                return planner.Plan(ask with { Depth = stepped }).Plan is { } plan
                    ? new HoleJob(job, plan.First, stepped)
                    : new HoleJob(SpreadJob.Caller, lines.Caller, ask.Depth);
            default:
                return new HoleJob(SpreadJob.Caller, lines.Caller, ask.Depth);
        }
    }
}
