namespace CrewBot.Core.Knowledge;

/// <summary>One thing of the trade, known by a key that other records and commands refer to.</summary>
public abstract record TradeRecord
{
    /// <summary>Lower case, words joined by hyphens: <c>yellow-perch</c>.</summary>
    public required string Key { get; init; }

    /// <summary>What an angler calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Other names it answers to.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Where its figures come from: a publication, or "common practice".</summary>
    public required string Source { get; init; }
}
