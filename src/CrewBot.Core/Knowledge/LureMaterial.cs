using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>What a weight is made of.</summary>
public sealed record LureMaterial : TradeRecord
{
    public required Density Density { get; init; }

    /// <summary>Falls under a lead ban.</summary>
    public bool Lead { get; init; }
}
