using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>A swivel, snap or split ring in one size.</summary>
public sealed record Hardware : TradeRecord
{
    public required HardwareKind Kind { get; init; }

    public required string Size { get; init; }

    /// <summary>Rated strength.</summary>
    public required Force Rated { get; init; }
}
