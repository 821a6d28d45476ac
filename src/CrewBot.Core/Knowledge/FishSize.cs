namespace CrewBot.Core.Knowledge;

/// <summary>The fish to rig for, as a winter crew speaks of it.</summary>
public enum FishSize
{
    Small,
    Typical,
    Large,
    Trophy,
}
