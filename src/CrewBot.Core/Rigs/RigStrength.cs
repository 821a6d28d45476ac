using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>Takes a tied rig apart into the links that carry the whole pull.</summary>
public static class RigStrength
{
    private static readonly Spread<double> Unknown = new() { Low = 0.5, High = 0.8 };
    private static readonly Spread<double> Crimped = new() { Low = 0.8, High = 0.95 };

    public const string LureKnot = "the knot at the lure";
    public const string HookBending = "the hook, which bends open";

    /// <summary>Every link, from the reel down.</summary>
    /// <param name="rig">The rig.</param>
    /// <returns>One link for each knot, each side of the join, each piece of hardware and the hook.</returns>
    /// <remarks>
    /// Efficiencies count against the label and do not multiply: each knot sees the whole load once. A knot that has no
    /// range for a material is taken at the trade's widest, 50 to 80 % (common practice).
    /// </remarks>
    public static IReadOnlyList<Link> LinksOf(TiedRig rig)
    {
        var links = new List<Link>(8);
        if (rig.Leader is { } leader)
        {
            links.Add(Knotted(JoinSide(rig.Mainline), rig.Mainline, rig.Join!));
            links.Add(Knotted(JoinSide(leader.Line), leader.Line, rig.Join!));
            links.Add(Knotted(LureKnot, leader.Line, rig.LureKnot));
        }
        else
        {
            links.Add(Knotted(LureKnot, rig.Mainline, rig.LureKnot));
        }

        foreach (var piece in rig.Hardware)
        {
            links.Add(new Link(PlaceOf(piece), piece.Rated, 1, 1));
        }

        if (rig.Hook is { Opens: var opens })
        {
            links.Add(new Link(HookBending, opens.High, opens.Low / opens.High, 1));
        }

        return links;
    }

    /// <summary>Where a join gives way when it is this line that parts.</summary>
    public static string JoinSide(LineChoice line) => $"the join, on the {line.Material.Name} side";

    /// <summary>Where a rig gives way when it is this piece that does.</summary>
    public static string PlaceOf(Hardware piece) => $"the {piece.Name}";

    /// <summary>What the mainline holds at best at the join, and what is below it at worst; null without a leader.</summary>
    /// <remarks>
    /// Braid often holds far more than its label, so only its best case against the leader's worst makes it sure which
    /// goes first.
    /// </remarks>
    internal static (Force MainAtBest, Force LeaderAtWorst)? AtJoin(TiedRig rig)
    {
        if (rig is not { Leader.Line: var below, Join: { } join })
        {
            return null;
        }

        var main = rig.Mainline;
        return (
            main.Test * main.Material.OverLabel.High * EfficiencyOf(join, main.Material).High,
            below.Test * Math.Min(EfficiencyOf(join, below.Material).Low, EfficiencyOf(rig.LureKnot, below.Material).Low));
    }

    /// <summary>What a knot leaves of a line: wire is crimped whatever ties the other lines.</summary>
    internal static Spread<double> EfficiencyOf(Knot knot, LineMaterial line) =>
        knot.Efficiency.TryGetValue(line.Key, out var known) ? known : line.Use == LineUse.Bite ? Crimped : Unknown;

    private static Link Knotted(string place, LineChoice line, Knot knot)
    {
        var left = EfficiencyOf(knot, line.Material);
        return new Link(place, line.Test, left.Low, left.High);
    }
}
