namespace CrewBot.Core.Rigs;

/// <summary>What can be wrong with a rig, worst first.</summary>
public enum RigFaultKind
{
    /// <summary>A fish that cuts line, and nothing against its teeth.</summary>
    NoBiteLeader,

    /// <summary>The weakest link may part at less than the fish asks.</summary>
    TooWeakForFish,

    /// <summary>The hook bends open first, whatever its wire.</summary>
    HookTooLight,

    /// <summary>The mainline surely parts above the join and trails in the fish.</summary>
    MainlinePartsFirst,

    /// <summary>Swivel, snap or ring is weaker than the weakest line.</summary>
    HardwareWeaker,

    /// <summary>A knot that is not made for this line.</summary>
    KnotUnsuited,

    /// <summary>The lure does not get down in good time.</summary>
    TooLightForDepth,

    /// <summary>The current carries the lure away from the hole.</summary>
    TooLightForCurrent,

    /// <summary>Braid straight to the lure, and a fish that minds.</summary>
    BraidToLure,

    /// <summary>A lure that twists line, and no swivel.</summary>
    NoSwivel,
}
