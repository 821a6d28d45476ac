namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a knot, and that it says what it leaves of every line it is tied in.</summary>
internal static class KnotCheck
{
    public static IEnumerable<Misfit> Misfits(Knot knot, TradeKnowledge all) =>
    [
        .. knot.Efficiency.Keys.Where(key => !all.Lines.Has(key))
            .Select(key => new Misfit("efficiency", FieldCheck.Unknown("line", key))),
        .. knot.Efficiency.SelectMany(entry => FieldCheck.Share($"efficiency.{entry.Key}", entry.Value)),
        .. all.Lines.Where(line => IsTiedIn(knot, line) && !knot.Efficiency.ContainsKey(line.Key))
            .Select(line => new Misfit("efficiency", $"Say what it leaves of {line.Key}.")),
        .. Ease(knot),
        .. FieldCheck.Text("note", knot.Note, FieldCheck.Sentence),
    ];

    private static bool IsTiedIn(Knot knot, LineMaterial line) =>
        (knot.Kind == KnotKind.Crimp) == (line.Use == LineUse.Bite);

    private static IEnumerable<Misfit> Ease(Knot knot)
    {
        if (knot.ColdHands is < 1 or > 5)
        {
            yield return new("coldHands", "Ease runs from 1 (at home only) to 5 (in mittens).");
        }
    }
}
