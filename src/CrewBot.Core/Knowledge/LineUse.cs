namespace CrewBot.Core.Knowledge;

/// <summary>Where in a rig a material serves.</summary>
public enum LineUse
{
    /// <summary>Mainline only.</summary>
    Main,

    /// <summary>Mainline or leader.</summary>
    MainAndLeader,

    /// <summary>Bite leader against teeth.</summary>
    Bite,
}
