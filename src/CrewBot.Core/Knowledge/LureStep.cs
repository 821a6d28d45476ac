using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>One size in which a lure, jig or dead bait is fished.</summary>
public sealed record LureStep
{
    /// <summary>Mass of the jig, lure or shot; for a dead bait, of the sinker beside it.</summary>
    public required Mass Weight { get; init; }

    /// <summary>Length of the whole lure, or of the bait.</summary>
    public required Length Length { get; init; }

    /// <summary>Its hook or trebles; null where the fish decides the hook.</summary>
    public HookSize? Hook { get; init; }
}
