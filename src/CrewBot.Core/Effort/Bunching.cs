namespace CrewBot.Core.Effort;

/// <summary>How much more fish come in bunches than one by one.</summary>
/// <remarks>
/// Pearson's statistic over its degrees of freedom, with every cell at its own rate: about 1 when fish come independently,
/// more when they school or hours differ. Evidence is divided by it, which is quasi-likelihood (McCullagh and Nelder 1989,
/// Generalized Linear Models, section 9, from memory).
/// </remarks>
public static class Bunching
{
    // Fewer spells say too little about their scatter.
    private const int LeastSpells = 10;

    /// <summary>Measures it over cells that are compared.</summary>
    /// <returns>1 or more; 1 with fewer than ten spells to judge by.</returns>
    public static double Of(IReadOnlyCollection<CellCount> cells)
    {
        var fished = cells.Where(cell => cell.Tally.Rate is { PerLineHour: > 0 }).ToList();
        var freedom = fished.Sum(cell => cell.Spells.Count) - fished.Count;
        if (freedom < LeastSpells)
        {
            return 1;
        }

        var pearson = fished.Sum(cell => cell.Spells
            .Where(spell => spell.LineTime.Hours > 0)
            .Sum(spell =>
            {
                var expected = cell.Tally.Rate!.Value.PerLineHour * spell.LineTime.Hours;
                return (spell.Fish - expected) * (spell.Fish - expected) / expected;
            }));
        return Math.Max(1, pearson / freedom);
    }
}
