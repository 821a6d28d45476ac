using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Effort;

/// <summary>A crew's ways of fishing for a species, ranked.</summary>
/// <param name="Ranking">Those that were fished, best founded first; then what the trade would show and nobody has fished.</param>
/// <param name="Keys">What each cell of the ranking was, by its key.</param>
/// <param name="Bunching">How bunched the fish came.</param>
/// <param name="Unrecorded">Fish and line-hours of which a dimension is not known.</param>
public sealed record WayRanking(CellRanking Ranking, IReadOnlyDictionary<string, EffortKey> Keys, double Bunching, Tally Unrecorded)
{
    /// <summary>The cells in which lines were down.</summary>
    public IReadOnlyList<RankedCell> Fished => [.. Ranking.Cells.Where(place => place.Cell.Tally.LineTime.Hours > 0)];

    /// <summary>Ranks them.</summary>
    /// <param name="log">The crew's fishing.</param>
    /// <param name="species">The fish; where species are told apart, the one whose prior stands for those not known.</param>
    /// <param name="dimensions">What to tell apart.</param>
    /// <param name="mood">Only hours in this mood; null for all.</param>
    /// <param name="knowledge">What the trade knows.</param>
    public static WayRanking Of(
        EffortLog log, Species species, IReadOnlyCollection<EffortDimension> dimensions, Mood? mood, TradeKnowledge knowledge)
    {
        IReadOnlyCollection<EffortDimension> told = mood is null ? dimensions : [.. dimensions.Append(EffortDimension.Mood).Distinct()];
        var count = log.By(told, dimensions.Contains(EffortDimension.Species) ? log.Species : [species.Key]);
        var counted = count.Cells.Where(cell => mood is null || cell.Key.Mood == mood).ToList();
        var bunching = Effort.Bunching.Of(counted);
        var bases = new Dictionary<string, CatchRate>();
        EffortCell Cell(EffortKey key, Tally tally)
        {
            var fish = key.Species is { } other && knowledge.Species.Has(other) ? knowledge.Species[other] : species;
            if (!bases.TryGetValue(fish.Key, out var whole))
            {
                bases[fish.Key] = whole = CatchPriors.Base(fish, log.Total(fish.Key));
            }

            return new EffortCell(key.ToString(), tally, CatchPriors.For(fish, key, whole)) { Bunching = bunching };
        }

        var keys = counted.Select(cell => cell.Key).ToList();
        var untried = dimensions.Count == 1 && dimensions.Contains(EffortDimension.Presentation)
            ? species.Presentations[mood ?? Mood.Neutral].Select(way => new EffortKey { Presentation = way, Mood = mood }).Except(keys).ToList()
            : [];
        return new WayRanking(
            CellRanking.Of([.. counted.Select(cell => Cell(cell.Key, cell.Tally)), .. untried.Select(key => Cell(key, new Tally(0, Duration.Zero)))]),
            keys.Concat(untried).ToDictionary(key => key.ToString()),
            bunching,
            count.Unrecorded);
    }
}
