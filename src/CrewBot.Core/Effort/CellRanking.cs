namespace CrewBot.Core.Effort;

/// <summary>Ways of fishing, the best founded first.</summary>
/// <param name="Cells">
/// By the low end of the 95 % credible interval: what a cell is good for if it has been lucky. Three fish in an hour have a
/// high rate and a wide interval, a good season has a narrow one. What nobody fished stands last.
/// </param>
public sealed record CellRanking(IReadOnlyList<RankedCell> Cells)
{
    private const double Credibility = 0.95;
    private const double WorthAnHour = 0.2;

    /// <summary>How sure it is that the first cell is better than all others that had their hours; null with fewer than two.</summary>
    /// <remarks>The chance that some other is better is at most the sum of their chances (Boole's inequality).</remarks>
    public Certainty? Lead
    {
        get
        {
            if (Cells.Count < 2)
            {
                return null;
            }

            var rivals = Cells.Skip(1).Where(cell => Certainties.HasHours(cell.Cell.Tally)).ToList();
            return Certainties.Of(
                Math.Max(0, 1 - rivals.Sum(rival => rival.ChanceOverFirst)), Cells[0].Cell.Tally, rivals.FirstOrDefault(Cells[1]).Cell.Tally);
        }
    }

    /// <summary>
    /// What to try next: the cell most likely to turn out better than the first, if that is at least one chance in five
    /// (judgement); null when there is none.
    /// </summary>
    public RankedCell? TryNext => Cells.Skip(1)
        .Where(cell => cell.ChanceOverFirst >= WorthAnHour)
        .MaxBy(cell => cell.ChanceOverFirst);

    /// <summary>Ranks cells; the order they come in does not matter.</summary>
    /// <exception cref="ArgumentException">Two cells share a key.</exception>
    public static CellRanking Of(IEnumerable<EffortCell> cells)
    {
        var believed = cells
            .Select(cell => (Cell: cell, Posterior: CatchPosterior.Of(cell.Prior, cell.Tally, cell.Bunching)))
            .Select(pair => (pair.Cell, pair.Posterior, Credible: pair.Posterior.Credible(Credibility)))
            .OrderByDescending(place => place.Cell.Tally.LineTime.Hours > 0)
            .ThenByDescending(place => place.Credible.Low.PerLineHour)
            .ThenByDescending(place => place.Posterior.Mean.PerLineHour)
            .ThenBy(place => place.Cell.Key, StringComparer.Ordinal)
            .ToList();
        if (believed.DistinctBy(place => place.Cell.Key).Count() < believed.Count)
        {
            throw new ArgumentException("Two cells share a key.", nameof(cells));
        }

        return new CellRanking(
        [
            .. believed.Select(place => new RankedCell(
                place.Cell, place.Posterior, place.Credible, place.Posterior.ChanceOver(believed[0].Posterior))),
        ]);
    }
}
