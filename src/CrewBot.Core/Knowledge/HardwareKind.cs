namespace CrewBot.Core.Knowledge;

/// <summary>Metal between line and lure.</summary>
public enum HardwareKind
{
    Swivel,
    Snap,
    SplitRing,
}
