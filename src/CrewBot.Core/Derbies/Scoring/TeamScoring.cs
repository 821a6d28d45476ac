namespace CrewBot.Core.Derbies.Scoring;

/// <summary>How a team's total comes from its members' fish.</summary>
/// <param name="IsPooled">True sums the best fish of all members' together; false sums the members' own totals.</param>
/// <param name="BestMembers">How many members' totals are summed, best first; null for all. Not for a pooled bag.</param>
/// <remarks>The two can rank teams differently: six fair fish of one angler fill a pooled bag and no team's total.</remarks>
public sealed record TeamScoring(bool IsPooled, int? BestMembers = null)
{
    internal Tally TallyOf(Competitor team, IEnumerable<IReadOnlyList<ScoredFish>> members, ScoringRule rule)
    {
        if (IsPooled)
        {
            var pool = members.SelectMany(fish => fish).ToList();
            pool.Sort(ScoredFish.Compare);
            return rule.TallyOf(team, pool);
        }

        var totals = members
            .Select(fish => rule.TallyOf(team, fish))
            .OrderByDescending(tally => tally.Total)
            .ThenBy(tally => tally.ReachedAt)
            .ToList();
        var best = totals.Take(BestMembers ?? totals.Count).ToList();
        return new Tally(
            team,
            best.Sum(tally => tally.Total),
            Sorted(best.SelectMany(tally => tally.Used)),
            Sorted(best.SelectMany(tally => tally.Spare).Concat(totals.Skip(best.Count).SelectMany(tally => tally.Used.Concat(tally.Spare)))));
    }

    private static List<ScoredFish> Sorted(IEnumerable<ScoredFish> fish)
    {
        var sorted = fish.ToList();
        sorted.Sort(ScoredFish.Compare);
        return sorted;
    }
}
