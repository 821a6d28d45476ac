namespace CrewBot.Core.Knowledge;

/// <summary>What a knot ties to what.</summary>
public enum KnotKind
{
    /// <summary>Line to line.</summary>
    Join,

    /// <summary>Line to hook, lure, snap or swivel.</summary>
    Terminal,

    /// <summary>Wire, by a crimped sleeve.</summary>
    Crimp,
}
