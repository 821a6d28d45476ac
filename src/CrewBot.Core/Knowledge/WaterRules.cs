namespace CrewBot.Core.Knowledge;

/// <summary>The rules of one water as a crew read them. Null is unknown, and unknown is never permission.</summary>
public sealed record WaterRules : TradeRecord
{
    /// <summary>Lines one angler may fish.</summary>
    public int? Lines { get; init; }

    /// <summary>Hooks on one line, a treble counted as one.</summary>
    public int? HooksPerLine { get; init; }

    public int? TreblesPerLine { get; init; }

    public bool? BarblessOnly { get; init; }

    /// <summary>Kinds of bait that are allowed.</summary>
    public IReadOnlyList<BaitKind>? Baits { get; init; }

    public bool? LeadBanned { get; init; }

}
