namespace CrewBot.Core.Derbies;

/// <summary>What makes an entry count without a steward.</summary>
public enum Evidence
{
    /// <summary>A crewmate says that they saw it.</summary>
    Crewmate,

    /// <summary>A photo came with it.</summary>
    Photo,

    /// <summary>The angler's own word.</summary>
    OwnWord,
}
