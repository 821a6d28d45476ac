using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>A complete rig with what it is made of, how it is fished, its numbers and why it is so.</summary>
public sealed record Rig
{
    public required Presentation Presentation { get; init; }

    public required Outfit Outfit { get; init; }

    public required TiedRig Tied { get; init; }

    public required Lure Lure { get; init; }

    /// <summary>Length of the whole lure, or of a dead bait.</summary>
    public required Length LureLength { get; init; }

    /// <summary>What the lure's height is measured from.</summary>
    public required StationNear Near { get; init; }

    /// <summary>How far from there it hangs; zero lies on the bottom.</summary>
    public required Length Height { get; init; }

    public required HookSize Hook { get; init; }

    /// <summary>Nothing lighter gets down here, or is made.</summary>
    public required bool IsLightest { get; init; }

    /// <summary>Nothing heavier is made.</summary>
    public required bool IsHeaviest { get; init; }

    /// <summary>Null when the presentation takes none.</summary>
    public Bait? Bait { get; init; }

    public required RigNumbers Numbers { get; init; }

    public required IReadOnlyList<Reason> Reasons { get; init; }

    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Rules of the water that touch this rig and are not known, in words: "lead", "live bait".</summary>
    public required IReadOnlyList<string> OpenRules { get; init; }
}
