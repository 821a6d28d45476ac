namespace CrewBot.Core.Effort;

/// <summary>The fishing of one cell.</summary>
/// <param name="Key">What it was.</param>
/// <param name="Spells">Fish and line-hours, spell by spell.</param>
public sealed record CellCount(EffortKey Key, IReadOnlyList<Tally> Spells)
{
    /// <summary>All of it.</summary>
    public Tally Tally { get; } = Tally.Total(Spells);
}
