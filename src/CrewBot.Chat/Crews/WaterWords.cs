using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Crews;

/// <summary>Says what a crew knows of a water. Whatever nobody has read is to be checked.</summary>
internal static class WaterWords
{
    private const string Unknown = "check";
    private const int MostSpecies = 3;

    /// <summary>Its rules about tackle, its spots and where it lies, and its sizes and limits, species by species.</summary>
    public static IEnumerable<string> Lines(Water water, TradeKnowledge knowledge)
    {
        var spots = water.Spots.Count > 0 ? $" Spots: {string.Join(", ", water.Spots.Select(spot => spot.Name))}." : "";
        var place = water.At is { } at ? string.Create(CultureInfo.InvariantCulture, $" Lies at {at.Latitude:0.##}, {at.Longitude:0.##}.") : "";
        yield return $"{water.Name}: {Tackle(water)}{spots}{place}";
        var species = knowledge.Species
            .Where(fish => water.Rules.Any(rule => RulesOfWater.Keeping.Any(what => rule.Rule == RulesOfWater.OfSpecies(what, fish.Key))))
            .ToList();
        foreach (var fish in species.Take(MostSpecies))
        {
            yield return Keeping(KeepRule.Of(water.Rules, fish.Key), fish);
        }

        if (species.Count > MostSpecies)
        {
            yield return $"Sizes and limits too for {string.Join(", ", species.Skip(MostSpecies).Select(fish => fish.Name))}.";
        }
    }

    private static string Tackle(Water water)
    {
        var known = RulesOfWater.All.SelectMany(rule => water.Rules.Where(stored => stored.Rule == rule)).ToList();
        var unknown = RulesOfWater.All.Except(known.Select(stored => stored.Rule)).ToList();
        var said = string.Join(", ", known.Select(stored => $"{stored.Rule} {stored.Value} ({stored.Reference})"));
        var check = $"check your regulations on {string.Join(", ", unknown)}: not filled in.";
        return (known, unknown) switch
        {
            (_, []) => $"{said}.",
            ([], _) => check,
            _ => $"{said}; {check}",
        };
    }

    private static string Keeping(KeepRule rule, Species species)
    {
        string[] parts =
        [
            rule.Minimum is { } least ? $"minimum {KeepRule.Write(least.Value)} ({least.Reference})" : $"minimum: {Unknown}",
            rule.Maximum is { } most ? $"maximum {KeepRule.Write(most.Value)} ({most.Reference})" : $"maximum: {Unknown}",
            rule.Limit is { } limit ? $"limit {limit.Value} a day ({limit.Reference})" : $"limit: {Unknown}",
        ];
        return $"{CatchWords.Sentence(species.Name)}: {string.Join(", ", parts)}.";
    }
}
