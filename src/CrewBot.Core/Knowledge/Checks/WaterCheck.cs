namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of the rules of a water, as a crew wrote them down.</summary>
internal static class WaterCheck
{
    private const int MostLines = 50;
    private const int MostHooks = 100;

    public static IEnumerable<Misfit> Misfits(WaterRules water)
    {
        if (water.Lines is < 1 or > MostLines)
        {
            yield return new("lines", "Lines for one angler lie from 1 to 50; leave it out while unknown.");
        }

        if (water.HooksPerLine is < 1 or > MostHooks)
        {
            yield return new("hooksPerLine", "Hooks on one line lie from 1 to 100; leave it out while unknown.");
        }

        if (water.TreblesPerLine is < 0 or > MostHooks || water.TreblesPerLine > water.HooksPerLine)
        {
            yield return new("treblesPerLine", "Trebles count among the hooks, from 0 (none); leave it out while unknown.");
        }

        if (water.Baits is { } baits && baits.Distinct().Count() < baits.Count)
        {
            yield return new("baits", "A kind of bait stands twice in the list: keep one.");
        }
    }
}
