using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>A rod and the lines that go with it: one rung of the ladder from panfish to dead bait.</summary>
public sealed record Outfit : TradeRecord
{
    /// <summary>The rod in words.</summary>
    public required string Rod { get; init; }

    /// <summary>Mainline when it is braid.</summary>
    public required Force Braid { get; init; }

    /// <summary>Leader of fluorocarbon.</summary>
    public required Force Leader { get; init; }

    /// <summary>Mainline when it is a single strand of nylon or fluorocarbon.</summary>
    public required Force SingleStrand { get; init; }

    /// <summary>Bite leader of wire.</summary>
    public required Force Wire { get; init; }
}
