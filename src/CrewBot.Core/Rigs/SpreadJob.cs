namespace CrewBot.Core.Rigs;

/// <summary>The jobs that holes of a crew share out.</summary>
public enum SpreadJob
{
    /// <summary>Makes noise and flash to bring fish in.</summary>
    Caller,

    /// <summary>Fishes quietly what the caller brings in.</summary>
    Sitter,

    /// <summary>Tries shallower or deeper water.</summary>
    DepthStep,

    /// <summary>Waits under a tip-up or on a set rod.</summary>
    SetLine,
}
