namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a break sign.</summary>
internal static class BreakSignCheck
{
    public static IEnumerable<Misfit> Misfits(BreakSign sign, TradeKnowledge all) =>
    [
        .. FieldCheck.Text("cause", sign.Cause, FieldCheck.Sentence),
        .. FieldCheck.Text("fix", sign.Fix, FieldCheck.Sentence),
        .. FieldCheck.Alone(
            sign, all.BreakSigns, "look", "that place and look", other => (other.Place, other.Look) == (sign.Place, sign.Look)),
    ];
}
