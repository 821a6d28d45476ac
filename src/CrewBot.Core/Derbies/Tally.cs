namespace CrewBot.Core.Derbies;

/// <summary>What a competitor has to show.</summary>
/// <param name="Who">The competitor.</param>
/// <param name="Total">Sum of what counts.</param>
/// <param name="Used">The fish that make up the total, best first.</param>
/// <param name="Spare">The fish that count but are not among the best, best first.</param>
public sealed record Tally(Competitor Who, decimal Total, IReadOnlyList<ScoredFish> Used, IReadOnlyList<ScoredFish> Spare)
{
    private long[]? _usedLengths;
    private long[]? _spareLengths;

    /// <summary>When the total was reached: the last catch among the fish that make it up.</summary>
    public DateTimeOffset ReachedAt { get; } = Used.Count > 0 ? Used.Max(fish => fish.Entry.CaughtAt) : DateTimeOffset.MaxValue;

    internal long[] UsedLengths => _usedLengths ??= Longest(Used);

    internal long[] SpareLengths => _spareLengths ??= Longest(Spare);

    private static long[] Longest(IReadOnlyList<ScoredFish> fish) =>
        [.. fish.Select(one => one.Scored.Nanometres).OrderDescending()];
}
