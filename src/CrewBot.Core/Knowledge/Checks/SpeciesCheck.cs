using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a species.</summary>
internal static class SpeciesCheck
{
    private const int LightLength = 70;
    private const double HeaviestKilograms = 100;
    private const double LongestCentimetres = 300;
    private const double DeepestMetres = 200;

    // Fulton's condition factor, 100 g/cm3 (Fulton 1904): pike lie near 0.7, bluegill near 2.5.
    private const double LeanestCondition = 0.3;
    private const double PlumpestCondition = 4;

    public static IEnumerable<Misfit> Misfits(Species species, TradeKnowledge all) =>
    [
        .. Sizes(species),
        .. BiometricsCheck.Misfits(species),
        .. FieldCheck.Text("light", species.Light, LightLength),
        .. Depths(species),
        .. Hooks(species.Hooks),
        .. Enum.GetValues<Mood>().SelectMany(mood => Presentations(species, mood, all)),
        .. FieldCheck.Keys("baits", species.Baits, all.Baits, "bait"),
        .. Baits(species, all),
    ];

    private static IEnumerable<Misfit> Sizes(Species species)
    {
        var weights = Enum.GetValues<FishSize>().Select(size => species.Weights[size].Kilograms).ToList();
        if (!(weights[0] > 0 && FieldCheck.Climbs(weights) && weights[^1] <= HeaviestKilograms))
        {
            yield return new("weights", "Weights must climb from small to trophy, above 0 and up to 100 kg.");
        }

        var lengths = Enum.GetValues<FishSize>().Select(size => species.Lengths[size].Centimeters).ToList();
        if (!(lengths[0] > 0 && FieldCheck.Climbs(lengths) && lengths[^1] <= LongestCentimetres))
        {
            yield return new("lengths", "Lengths must climb from small to trophy, above 0 and up to 300 cm.");
        }
        else if (weights.Zip(lengths, Condition).Any(factor => factor is < LeanestCondition or > PlumpestCondition))
        {
            yield return new("weights", "No fish of these lengths weighs that: check the units of both.");
        }

        if (species.BodyDepthShare is not (> 0 and <= 1))
        {
            yield return new("bodyDepthShare", "Write body depth as a share of length, above 0 and up to 1.");
        }
    }

    private static double Condition(double kilograms, double centimetres) =>
        100 * 1000 * kilograms / Math.Pow(centimetres, 3);

    private static IEnumerable<Misfit> Depths(Species species)
    {
        var band = species.Depth;
        var (from, usual, to) = (band.From.Meters, band.Usual.Meters, band.To.Meters);
        if (!(from > 0 && from <= usual && usual <= to && to <= DeepestMetres))
        {
            yield return new("depth", "From, usual and to must not fall in that order; all above 0 and down to 200 m.");
        }

        foreach (var mood in Enum.GetValues<Mood>())
        {
            if (species.Station.Gap[mood] < Length.Zero || species.Station.Gap[mood] >= band.Usual)
            {
                yield return new("station.gap", "The gap must be 0 or more and less than the usual depth.");
            }
        }

        if (species.BarotraumaDepth is { } depth && !(depth > Length.Zero && depth.Meters <= DeepestMetres))
        {
            yield return new("barotraumaDepth", "It lies above 0 and down to 200 m; leave it out where none is established.");
        }
    }

    private static IEnumerable<Misfit> Hooks(Spread<HookSize> hooks)
    {
        if (hooks.Low > hooks.High)
        {
            yield return new("hooks", "Low is the smallest hook: 6 is smaller than 2, and 2 smaller than 1/0.");
        }
    }

    private static IEnumerable<Misfit> Presentations(Species species, Mood mood, TradeKnowledge all)
    {
        var field = $"presentations.{MoodName(mood)}";
        var keys = species.Presentations[mood];
        foreach (var misfit in FieldCheck.Keys(field, keys, all.Presentations, "presentation"))
        {
            yield return misfit;
        }

        foreach (var presentation in keys.Where(all.Presentations.Has).Select(key => all.Presentations[key]))
        {
            if (!presentation.Work.ContainsKey(mood))
            {
                yield return new(field, $"{presentation.Key} has no work for that mood: take it out, or write one.");
            }

            if (!presentation.Outfits.ContainsKey(species.Class))
            {
                yield return new(field, $"{presentation.Key} has no outfit for that class: take it out, or give it one.");
            }
        }
    }

    private static IEnumerable<Misfit> Baits(Species species, TradeKnowledge all)
    {
        var shown = Enum.GetValues<Mood>().SelectMany(mood => species.Presentations[mood]).ToHashSet();
        return species.Baits
            .Where(key => all.Baits.Has(key) && !all.Baits[key].Serves.Any(shown.Contains))
            .Select(key => new Misfit("baits", $"{key} serves none of its presentations: take it out."));
    }

    private static string MoodName(Mood mood) => mood.ToString().ToLowerInvariant();
}
