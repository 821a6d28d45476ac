namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a break sign.</summary>
internal static class BreakSignCheck
{
    public static IEnumerable<Misfit> Misfits(BreakSign sign, TradeKnowledge all) =>
    [
        .. FieldCheck.Text("cause", sign.Cause, FieldCheck.Sentence),
        .. FieldCheck.Text("fix", sign.Fix, FieldCheck.Sentence),
        .. Alone(sign, all),
    ];

    private static IEnumerable<Misfit> Alone(BreakSign sign, TradeKnowledge all)
    {
        if (all.BreakSigns.First(other => other.Place == sign.Place && other.Look == sign.Look).Key is var first && first != sign.Key)
        {
            yield return new("look", $"{first} is that place and look already: change that record instead.");
        }
    }
}
