using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of the sizes a presentation is made in, and of the weights to start from.</summary>
internal static class LureStepsCheck
{
    private const double HeaviestGrams = 1000;
    private const double LongestCentimetres = 100;
    private const double SameWeight = 0.001;

    public static IEnumerable<Misfit> Misfits(Presentation presentation) =>
        Ladder(presentation.Sizes).Concat(Start(presentation));

    private static IEnumerable<Misfit> Ladder(IReadOnlyList<LureStep> sizes)
    {
        if (sizes.Count == 0)
        {
            yield return new("sizes", "The list is empty: name at least one size.");
            yield break;
        }

        if (!(sizes[0].Weight > Mass.Zero
            && FieldCheck.Climbs(sizes.Select(size => size.Weight.Grams)) && sizes[^1].Weight.Grams <= HeaviestGrams))
        {
            yield return new("sizes", "List the lightest first, each weight once, above 0 and up to 1 kg.");
        }

        if (!(sizes[0].Length > Length.Zero
            && FieldCheck.NeverFalls(sizes.Select(size => size.Length.Centimeters))
            && sizes[^1].Length.Centimeters <= LongestCentimetres))
        {
            yield return new("sizes", "A heavier size must not be shorter; lengths lie above 0 and up to 1 m.");
        }

        var hooks = sizes.Where(size => size.Hook is not null).Select(size => (double)size.Hook!.Value.Rank).ToList();
        if (hooks.Count > 0 && (hooks.Count < sizes.Count || !FieldCheck.NeverFalls(hooks)))
        {
            yield return new("sizes", "Give every size a hook or none, and a heavier size never a smaller hook.");
        }
    }

    private static IEnumerable<Misfit> Start(Presentation presentation)
    {
        var classes = presentation.Outfits.Keys.ToHashSet();
        if (classes.Count == 0 || !classes.SetEquals(presentation.StartWeight.Keys))
        {
            yield return new("startWeight", "Start weights and outfits must name the same size classes, at least one.");
        }

        foreach (var start in presentation.StartWeight.Values)
        {
            if (!presentation.Sizes.Any(size => Same(size.Weight, start)))
            {
                var stated = FormattableString.Invariant($"{start.Grams:0.###} g");
                yield return new("startWeight", $"{stated} is none of its sizes: start from one of them.");
            }
        }
    }

    private static bool Same(Mass one, Mass other) => Math.Abs(one.Grams - other.Grams) <= SameWeight * one.Grams;
}
