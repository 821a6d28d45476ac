using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>A kind of thing that people bring on a trip.</summary>
public sealed record GearKind : TradeRecord
{
    public required GearFamily Family { get; init; }

    /// <summary>What one of it weighs, ready to use.</summary>
    public required Mass Mass { get; init; }

    /// <summary>How many sit in it with tackle and heater in place; 1 to 12, and only where people sit.</summary>
    public int? Seats { get; init; }

    /// <summary>The ice that it covers.</summary>
    public Area? Footprint { get; init; }

    /// <summary>How long one person takes to set it up.</summary>
    public Duration? Setup { get; init; }

    /// <summary>What a heater gives at full.</summary>
    public Power? Heat { get; init; }

    /// <summary>The hole that an auger cuts, across.</summary>
    public Length? Hole { get; init; }

    /// <summary>Turned by a motor rather than by hand.</summary>
    public bool IsPowered { get; init; }

    /// <summary>What a sled or a machine carries or pulls over packed snow.</summary>
    public Mass? Carries { get; init; }
}
