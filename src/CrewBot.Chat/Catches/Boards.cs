using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>The crew's boards over some fish, each a line with its rule; whoever is level shares the place.</summary>
internal sealed class Boards(IReadOnlyList<LoggedCatch> caught, TradeKnowledge knowledge, CrewUnits units)
{
    private const int MostNamed = 4;

    /// <summary>The longest of each species, those that were caught most first.</summary>
    public IEnumerable<string> Longest => caught
        .Where(fish => fish.Entry.Length is not null)
        .GroupBy(fish => fish.Entry.Species)
        .OrderByDescending(species => species.Count())
        .ThenBy(species => species.Key, StringComparer.Ordinal)
        .Select(species =>
        {
            var first = Highest(species, fish => fish.Entry.Length!.Value.Nanometres);
            return $"Longest {CatchWords.NameOf(species.Key, knowledge)}: {CatchWords.Length(first[0].Entry.Length!.Value, units)}, {Holders(first)}.";
        });

    /// <summary>Who caught the most different species.</summary>
    public string MostSpecies
    {
        get
        {
            var counts = Anglers(caught).Select(own => (own.Key.Name, Count: own.Select(fish => fish.Entry.Species).Distinct().Count())).ToList();
            var first = Highest(counts, own => own.Count);
            return string.Create(CultureInfo.InvariantCulture, $"Most species (each counts once): {first[0].Count}, {Words(first.Select(own => own.Name))}.");
        }
    }

    /// <summary>Whose fish come to the greatest length together.</summary>
    public IEnumerable<string> BestTotal
    {
        get
        {
            var totals = Anglers(caught.Where(fish => fish.Entry.Length is not null))
                .Select(own => (own.Key.Name, Total: own.Sum(fish => fish.Entry.Length!.Value.Nanometres)))
                .ToList();
            if (totals.Count > 0)
            {
                var first = Highest(totals, own => own.Total);
                yield return $"Best total (all measured lengths together): {CatchWords.Length(first[0].Total, units)}, {Words(first.Select(own => own.Name))}.";
            }
        }
    }

    /// <summary>The weighed fish that is heaviest for its length.</summary>
    public IEnumerable<string> BestCondition
    {
        get
        {
            var weighed = caught
                .Select(fish => (Fish: fish, Percent: RelativeWeightOf(fish)))
                .Where(pair => pair.Percent is not null)
                .ToList();
            if (weighed.Count > 0)
            {
                var first = Highest(weighed, pair => pair.Percent!.Value);
                var species = string.Join(" and ", first.Select(pair => CatchWords.NameOf(pair.Fish.Entry.Species, knowledge)).Distinct());
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"Best condition (relative weight of weighed fish, to 0.1 %): {species} at {first[0].Percent:0.0} %, {Holders(first.Select(pair => pair.Fish))}.");
            }
        }
    }

    // To a tenth of a percent: no scale tells more.
    private decimal? RelativeWeightOf(LoggedCatch fish) =>
        fish.Entry is { Length: { } length, Weight: { } weight } && knowledge.Species.Has(fish.Entry.Species)
        && RelativeWeight.Of(knowledge.Species[fish.Entry.Species], length.Length, weight.Mass) is { } relative
            ? decimal.Round((decimal)relative.Share.Percent, 1)
            : null;

    private static IEnumerable<IGrouping<(long Id, string Name), LoggedCatch>> Anglers(IEnumerable<LoggedCatch> fish) =>
        fish.GroupBy(one => (one.Entry.MemberId, one.Angler));

    private static List<T> Highest<T, TScore>(IEnumerable<T> all, Func<T, TScore> score)
    {
        var list = all.ToList();
        var top = list.Max(score);
        return [.. list.Where(one => Equals(score(one), top))];
    }

    private static string Holders(IEnumerable<LoggedCatch> fish) => Words(fish.Select(one => $"{one.Angler} (#{one.Number})"));

    private static string Words(IEnumerable<string> names)
    {
        var level = names.Order(StringComparer.Ordinal).ToList();
        return level.Count <= MostNamed
            ? string.Join(" and ", level)
            : $"{string.Join(", ", level.Take(MostNamed))} and {level.Count - MostNamed} more, all level";
    }
}
