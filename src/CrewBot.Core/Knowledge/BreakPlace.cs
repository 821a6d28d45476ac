namespace CrewBot.Core.Knowledge;

/// <summary>Where along the rig the end is found after a break-off.</summary>
public enum BreakPlace
{
    AtLure,
    InLeader,
    AtJoin,
    InMainline,
    AtHardware,
    AtHook,
}
