using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Effort;

/// <summary>What one cell of fishing was: only what it is told apart by is set.</summary>
public sealed record EffortKey
{
    /// <summary>Key of the presentation.</summary>
    public string? Presentation { get; init; }

    public Mood? Mood { get; init; }

    /// <summary>Key of the species.</summary>
    public string? Species { get; init; }

    public DepthZone? Depth { get; init; }

    public DayPart? Time { get; init; }

    /// <summary>The same as one text, different for different cells.</summary>
    public override string ToString() => FormattableString.Invariant($"{Presentation}|{Mood}|{Species}|{Depth?.From.Feet:0}|{Time}");
}
