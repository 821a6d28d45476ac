namespace CrewBot.Core.Knowledge;

/// <summary>What a mouth does to a leader.</summary>
public enum Teeth
{
    /// <summary>Leaves it alone.</summary>
    Nothing,

    /// <summary>Roughens it: check it by feel, retie often.</summary>
    Abrades,

    /// <summary>Cuts nylon, fluorocarbon and braid: wants a bite leader.</summary>
    Cuts,
}
