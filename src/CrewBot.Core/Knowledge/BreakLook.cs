namespace CrewBot.Core.Knowledge;

/// <summary>How the end looks after a break-off.</summary>
public enum BreakLook
{
    /// <summary>A pig's tail: it slipped out of its knot.</summary>
    Curl,

    /// <summary>Cut square.</summary>
    Clean,

    /// <summary>Fluffed or rough.</summary>
    Frayed,

    /// <summary>Pinched or ribbon-like.</summary>
    Flattened,

    /// <summary>Metal bent open.</summary>
    Straightened,
}
