namespace CrewBot.Core.Knowledge;

/// <summary>A knot, or a crimp, and what it leaves of the line's strength.</summary>
public sealed record Knot : TradeRecord
{
    public required KnotKind Kind { get; init; }

    /// <summary>Share of the label strength that is left, by line material key.</summary>
    public required IReadOnlyDictionary<string, Spread<double>> Efficiency { get; init; }

    /// <summary>Ease with cold hands, 1 (at home only) to 5 (in mittens).</summary>
    public required int ColdHands { get; init; }

    /// <summary>One line on when and how.</summary>
    public required string Note { get; init; }
}
