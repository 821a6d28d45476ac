namespace CrewBot.Core.Ice;

/// <summary>What ice looks like in the hole.</summary>
public enum IceKind
{
    /// <summary>Nobody said: counted as white.</summary>
    Unknown,

    /// <summary>New clear ice: black or blue.</summary>
    Clear,

    /// <summary>Snow ice, milky or opaque.</summary>
    White,

    /// <summary>Grey or dark and wet: water is in it.</summary>
    Grey,

    /// <summary>Candled, honeycombed or rotten.</summary>
    Candled,

    /// <summary>Slush, frozen or not.</summary>
    Slushy,

    /// <summary>Layers with water or air between.</summary>
    Layered,

    /// <summary>Frozen again after a thaw.</summary>
    Refrozen,
}
