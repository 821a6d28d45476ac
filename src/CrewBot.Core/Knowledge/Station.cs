using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>Where the lure hangs for a species.</summary>
public sealed record Station
{
    public required StationNear Near { get; init; }

    /// <summary>How far above the bottom, or above the fish, or below the ice.</summary>
    public required ByMood<Length> Gap { get; init; }
}
