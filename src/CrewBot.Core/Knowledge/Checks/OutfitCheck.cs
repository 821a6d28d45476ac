using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of an outfit and of its place on the ladder.</summary>
internal static class OutfitCheck
{
    private const int RodLength = 90;

    private static readonly (string Field, LineUse Use, Func<Outfit, Force> Of)[] Lines =
    [
        ("braid", LineUse.Main, outfit => outfit.Braid),
        ("leader", LineUse.MainAndLeader, outfit => outfit.Leader),
        ("singleStrand", LineUse.MainAndLeader, outfit => outfit.SingleStrand),
        ("wire", LineUse.Bite, outfit => outfit.Wire),
    ];

    public static IEnumerable<Misfit> Misfits(Outfit outfit, TradeKnowledge all) =>
    [
        .. FieldCheck.Text("rod", outfit.Rod, RodLength),
        .. Unlisted(outfit, all),
        .. OutOfOrder(outfit, all.Outfits),
    ];

    private static IEnumerable<Misfit> Unlisted(Outfit outfit, TradeKnowledge all) =>
        from line in Lines
        let tables = all.Lines.Where(material => material.Use == line.Use && material.Sizes.Count > 0)
        where !tables.Any(table => table.Sizes[0].Test <= line.Of(outfit) && line.Of(outfit) <= table.Sizes[^1].Test)
        select new Misfit(line.Field, "No line of that kind is listed in that test: choose one from the line tables.");

    private static IEnumerable<Misfit> OutOfOrder(Outfit outfit, RecordSet<Outfit> ladder)
    {
        var below = ladder.TakeWhile(other => other.Key != outfit.Key).ToList();
        var lighter = below.LastOrDefault();
        var heavier = ladder.ElementAtOrDefault(below.Count + 1);
        foreach (var (field, _, test) in Lines)
        {
            if (lighter is not null && test(outfit) < test(lighter))
            {
                yield return new(field, $"Lightest first: no lighter than on {lighter.Key}, the one before.", lighter.Key);
            }

            if (heavier is not null && test(outfit) > test(heavier))
            {
                yield return new(field, $"Lightest first: no heavier than on {heavier.Key}, the next one.", heavier.Key);
            }
        }
    }
}
