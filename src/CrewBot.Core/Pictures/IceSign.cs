namespace CrewBot.Core.Pictures;

/// <summary>The kinds of ice that a picture tells apart.</summary>
public enum IceSign
{
    /// <summary>Clear, new ice.</summary>
    Clear,

    /// <summary>White or snow ice, in which air makes up part of the thickness.</summary>
    White,

    /// <summary>Layers, slush between them, or rotten: as good as nothing.</summary>
    Unsound,

    /// <summary>Nobody said.</summary>
    Unknown,
}
