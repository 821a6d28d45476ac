using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>A complete rig with what it is made of, how it is fished, its numbers and why it is so.</summary>
/// <remarks>Numbers, reasons and cautions are worked out when they are first asked for.</remarks>
public sealed record Rig
{
    private readonly RigDetails _details;

    internal Rig(RigDetails details) => _details = details;

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

    /// <summary>The hook is the lure's own; otherwise it is chosen and tied by itself.</summary>
    public bool HookComesWithLure => _details.HookComesWithLure;

    /// <summary>The mainline that would suit better, where the line was given: on a reel, or in a box; null where none would.</summary>
    public LineChoice? BetterMainline => _details.BetterMainline;

    /// <summary>Nothing lighter gets down here, or is made.</summary>
    public bool IsLightest => _details.IsLightest;

    /// <summary>Nothing heavier is made.</summary>
    public required bool IsHeaviest { get; init; }

    /// <summary>Null when the presentation takes none.</summary>
    public Bait? Bait { get; init; }

    public RigNumbers Numbers => field ??= _details.NumbersOf(this);

    public IReadOnlyList<Reason> Reasons => field ??= _details.ReasonsOf(this);

    public IReadOnlyList<Caution> Cautions => field ??= _details.CautionsOf(this);

    /// <summary>Rules of the water that touch this rig and are not known, in words: "lead", "live bait".</summary>
    public required IReadOnlyList<string> OpenRules { get; init; }
}
