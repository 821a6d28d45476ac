using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>One size of split shot on one of the two national scales, which use the same letters for different masses.</summary>
public sealed record SplitShot : TradeRecord
{
    public required ShotScale Scale { get; init; }

    public required string Size { get; init; }

    /// <summary>Nominal mass; good to a tenth.</summary>
    public required Mass Mass { get; init; }
}
