using CrewBot.Core.Derbies.Scoring;

namespace CrewBot.Core.Derbies;

/// <summary>The rules of a derby, fixed when it is created.</summary>
public sealed record DerbySettings
{
    public required DerbyWindow Window { get; init; }

    public required MeasuringGrid Grid { get; init; }

    public required ScoringRule Scoring { get; init; }

    public EntryLimits Limits { get; init; } = new();

    public Evidence Evidence { get; init; }

    /// <summary>What parts equal totals, first to last; empty leaves them level.</summary>
    public IReadOnlyList<TieBreak> Ties { get; init; } = [];

    public RankNumbers Ranking { get; init; }

    /// <summary>How teams score; null when everybody fishes for themselves.</summary>
    public TeamScoring? Teams { get; init; }

    /// <summary>How long after the last word protests are heard.</summary>
    public TimeSpan ProtestTime { get; init; }
}
