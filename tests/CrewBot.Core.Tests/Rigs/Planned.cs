using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>What the planner makes of a question, from what the trade knows.</summary>
internal static class Planned
{
    public static readonly TradeKnowledge Trade = TradeKnowledge.BuiltIn;
    public static readonly RigPlanner Planner = new(Trade);

    public static Rig First(RigAsk ask) => Planner.Plan(ask).Plan!.First;

    public static string Text(FormattableString text) => FormattableString.Invariant(text);
}
