using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>At what pull a hook of one size starts to open: fine wire at the low end, strong wire at the high.</summary>
public sealed record HookRating : TradeRecord
{
    public required HookSize Size { get; init; }

    public required Spread<Force> Opens { get; init; }
}
