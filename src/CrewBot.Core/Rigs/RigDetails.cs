using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>
/// What of a rig is worked out when somebody looks: of an alternative, hardly more than the name is ever shown.
/// </summary>
/// <param name="ask">What the rig answers.</param>
/// <param name="knowledge">What the trade knows.</param>
/// <param name="lines">Why its lines are what they are.</param>
/// <param name="chosen">Its lure.</param>
/// <param name="bait">Its bait.</param>
internal sealed class RigDetails(
    RigAsk ask, TradeKnowledge knowledge, LineReasons lines, ChosenLure chosen, ChosenBait bait)
{
    public bool IsLightest => chosen.IsLightest;

    public LineChoice? BetterMainline => lines.BetterMainline;

    public bool HookComesWithLure => chosen.Size.Hook is not null;

    public RigNumbers NumbersOf(Rig rig) => RigArithmetic.Of(ask, rig.Tied, rig.Lure, knowledge.Lines["nylon"])
        ?? throw new InvalidOperationException("A lure that was chosen for a depth gets there.");

    public IReadOnlyList<Caution> CautionsOf(Rig rig) => RigCautions.For(ask, rig.Presentation, rig.Tied, rig.Numbers);

    public IReadOnlyList<Reason> ReasonsOf(Rig rig) =>
    [
        new("presentation", RigReasons.Presentation(ask, rig.Presentation)),
        .. RigReasons.Crew(ask, rig.Presentation, knowledge),
        .. lines.Give(),
        .. LureReasons.Of(ask, chosen, knowledge.SplitShot),
        new("hook", HookChooser.Why(ask, rig.Presentation, rig.Hook)),
        new("bait", bait.Why),
        new("where", RigReasons.Where(ask, rig)),
        .. RigWorkings.Of(ask, rig.Tied, rig.Lure, rig.Numbers),
    ];
}
