using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What the planner makes of a question, from what the trade knows.</summary>
internal static class Planned
{
    public static readonly TradeKnowledge Trade = TradeKnowledge.BuiltIn;
    public static readonly RigPlanner Planner = new(Trade);

    /// <summary>The rig and its alternatives; none where nothing can be planned.</summary>
    public static IEnumerable<Rig> All(RigAsk ask) => Planner.Plan(ask).Plan is { } plan ? [plan.First, .. plan.Alternatives] : [];

    /// <summary>What a rig for a question is up against.</summary>
    public static RigSituation Situation(RigAsk ask) => new()
    {
        Species = ask.Species,
        Size = ask.Size,
        Depth = ask.Depth,
        Current = ask.Current,
        Water = ask.Water,
    };

    /// <summary>What the checker finds wrong with a rig for a question.</summary>
    public static IEnumerable<string> FaultsOf(RigAsk ask, Rig rig) => RigChecker.Check(rig.Tied, Situation(ask)).Faults.Select(fault => Text(fault.What));

    public static Rig First(RigAsk ask) => Planner.Plan(ask).Plan!.First;

    public static string Text(FormattableString text) => FormattableString.Invariant(text);
}
