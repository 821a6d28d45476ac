namespace CrewBot.Core.Derbies.Scoring;

/// <summary>Puts tallies in order and numbers their places. Names and numbers never break a tie.</summary>
internal static class RankOrder
{
    public static IReadOnlyList<Standing> Rank(IReadOnlyList<Tally> tallies, IReadOnlyList<TieBreak> ties, RankNumbers numbers)
    {
        // A steady order inside a level group, which all share one place.
        var sorted = tallies
            .OrderBy(tally => tally, Comparer<Tally>.Create((one, other) => Compare(one, other, ties).Order))
            .ThenBy(tally => tally.Who.Angler)
            .ThenBy(tally => tally.Who.Team, StringComparer.Ordinal)
            .ToList();
        var lines = new List<Standing>(sorted.Count);
        for (var (first, group) = (0, 1); first < sorted.Count; group++)
        {
            var after = first + 1;
            while (after < sorted.Count && Compare(sorted[first], sorted[after], ties).Order == 0)
            {
                after++;
            }

            var rank = numbers switch
            {
                RankNumbers.Standard => first + 1,
                RankNumbers.Dense => group,
                RankNumbers.Modified => after,
                _ => (first + 1 + after) / 2m,
            };
            var parted = first > 0 ? Compare(sorted[first - 1], sorted[first], ties).By : null;
            lines.AddRange(sorted[first..after].Select(tally => new Standing(rank, after - first > 1, tally, parted)));
            first = after;
        }

        return lines;
    }

    private static (int Order, TieBreak? By) Compare(Tally one, Tally other, IReadOnlyList<TieBreak> ties)
    {
        if (other.Total.CompareTo(one.Total) is var order and not 0)
        {
            return (order, null);
        }

        foreach (var tie in ties)
        {
            var parted = tie switch
            {
                TieBreak.NextBest => Longer(one.SpareLengths, other.SpareLengths),
                TieBreak.BigFish => Longer(one.UsedLengths, other.UsedLengths),
                _ => one.ReachedAt.CompareTo(other.ReachedAt),
            };
            if (parted != 0)
            {
                return (parted, tie);
            }
        }

        return (0, null);
    }

    private static int Longer(long[] one, long[] other)
    {
        for (var place = 0; place < Math.Max(one.Length, other.Length); place++)
        {
            var (first, second) = (place < one.Length ? one[place] : 0, place < other.Length ? other[place] : 0);
            if (first != second)
            {
                return second.CompareTo(first);
            }
        }

        return 0;
    }
}
