using CrewBot.Core.Fish;

namespace CrewBot.Core.Derbies;

/// <summary>Which fish a derby takes. Nothing set is nothing asked.</summary>
public sealed record EntryLimits
{
    /// <summary>The shortest scored length that counts.</summary>
    public ExactLength? Minimum { get; init; }

    /// <summary>Keys of the species that count; empty for all.</summary>
    public IReadOnlyList<string> Species { get; init; } = [];

    /// <summary>Names of the waters that count; empty for all.</summary>
    public IReadOnlyList<string> Waters { get; init; } = [];

    /// <summary>Only kept fish, or only released ones; null for both.</summary>
    public bool? Kept { get; init; }

    /// <summary>How many fish one angler may enter; null for as many as they catch.</summary>
    public int? MostEntries { get; init; }
}
