namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a bait.</summary>
internal static class BaitCheck
{
    public static IEnumerable<Misfit> Misfits(Bait bait, TradeKnowledge all) =>
    [
        .. FieldCheck.Keys("serves", bait.Serves, all.Presentations, "presentation"),
        .. FieldCheck.Text("hooking", bait.Hooking, FieldCheck.Sentence),
    ];
}
