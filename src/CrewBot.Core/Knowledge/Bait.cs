namespace CrewBot.Core.Knowledge;

/// <summary>Something on the hook that is or smells like food.</summary>
public sealed record Bait : TradeRecord
{
    public required BaitKind Kind { get; init; }

    /// <summary>Keys of the presentations it serves.</summary>
    public required IReadOnlyList<string> Serves { get; init; }

    /// <summary>How it goes on the hook.</summary>
    public required string Hooking { get; init; }
}
