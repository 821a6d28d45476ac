using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>The crew's boards, each a line with its rule; whoever is level shares the place.</summary>
/// <param name="tallies">What each angler caught of each species.</param>
/// <param name="weighed">The fish among them that were measured and weighed.</param>
/// <param name="knowledge">The trade.</param>
/// <param name="units">The reader's units.</param>
internal sealed class Boards(
    IReadOnlyList<CatchTally> tallies, IReadOnlyList<WeighedFish> weighed, TradeKnowledge knowledge, CrewUnits units)
{
    private const int MostNamed = 4;

    /// <summary>How many fish the boards count.</summary>
    public long Fish { get; } = tallies.Sum(tally => tally.Fish);

    /// <summary>The longest of each species, those that were caught most first.</summary>
    public IEnumerable<string> Longest => tallies
        .GroupBy(tally => tally.Species)
        .OrderByDescending(species => species.Sum(tally => tally.Fish))
        .ThenBy(species => species.Key, StringComparer.Ordinal)
        .Select(species => species.Where(tally => tally.LongestNm is not null).ToList())
        .Where(measured => measured.Count > 0)
        .Select(measured =>
        {
            var first = Highest(measured, tally => tally.LongestNm!.Value);
            var holders = Words(first.Select(tally => Holder(tally.Angler, tally.Longest!.Value)));
            return $"Longest {CatchWords.NameOf(first[0].Species, knowledge)}: {CatchWords.Length(first[0].LongestNm!.Value, units)}, {holders}.";
        });

    /// <summary>Who caught the most different species.</summary>
    public string MostSpecies
    {
        get
        {
            var first = Highest(Anglers(own => own.Count()), own => own.Score);
            return string.Create(CultureInfo.InvariantCulture, $"Most species (each counts once): {first[0].Score}, {Words(first.Select(own => own.Name))}.");
        }
    }

    /// <summary>Whose fish come to the greatest length together.</summary>
    public IEnumerable<string> BestTotal
    {
        get
        {
            var first = Highest(Anglers(own => own.Sum(tally => tally.TotalNm)), own => own.Score);
            return first[0].Score > 0
                ? [$"Best total (all measured lengths together): {CatchWords.Total(first[0].Score, units)}, {Words(first.Select(own => own.Name))}."]
                : [];
        }
    }

    /// <summary>The weighed fish that is heaviest for its length.</summary>
    public IEnumerable<string> BestCondition
    {
        get
        {
            var rated = weighed.GroupBy(fish => fish.Species)
                .Where(fish => knowledge.Species.Has(fish.Key))
                .SelectMany(fish => Rated(knowledge.Species[fish.Key], fish))
                .ToList();
            if (rated.Count > 0)
            {
                var first = Highest(rated, pair => pair.Percent);
                var species = string.Join(" and ", first.Select(pair => CatchWords.NameOf(pair.Fish.Species, knowledge)).Distinct());
                var holders = Words(first.Select(pair => Holder(pair.Fish.Angler, pair.Fish.Number)));
                yield return string.Create(
                    CultureInfo.InvariantCulture,
                    $"Best condition (relative weight of weighed fish, to 0.1 %): {species} at {first[0].Percent:0.0} %, {holders}.");
            }
        }
    }

    // To a tenth of a percent: no scale tells more.
    private static IEnumerable<(WeighedFish Fish, double Percent)> Rated(Species species, IEnumerable<WeighedFish> weighed)
    {
        foreach (var fish in weighed)
        {
            if (RelativeWeight.Of(species, fish.Length, fish.Weight) is { } relative)
            {
                yield return (fish, Math.Round(relative.Share.Percent, 1));
            }
        }
    }

    private List<(string Name, long Score)> Anglers(Func<IEnumerable<CatchTally>, long> score) =>
        [.. tallies.GroupBy(tally => tally.MemberId).Select(own => (own.First().Angler, score(own)))];

    private static List<T> Highest<T, TScore>(List<T> all, Func<T, TScore> score)
    {
        var top = all.Max(score);
        return [.. all.Where(one => EqualityComparer<TScore>.Default.Equals(score(one), top))];
    }

    private static string Holder(string angler, long number) => $"{angler} (#{number})";

    private static string Words(IEnumerable<string> names)
    {
        var level = names.Order(StringComparer.Ordinal).ToList();
        return level.Count <= MostNamed
            ? string.Join(" and ", level)
            : $"{string.Join(", ", level.Take(MostNamed))} and {level.Count - MostNamed} more, all level";
    }
}
