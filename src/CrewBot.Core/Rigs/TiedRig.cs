using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>A rig as it is tied, whoever tied it: what the checker looks at.</summary>
public sealed record TiedRig
{
    public required LineChoice Mainline { get; init; }

    /// <summary>Null when the lure hangs straight from the mainline.</summary>
    public Leader? Leader { get; init; }

    /// <summary>Line to line, or line to swivel where there is one; null without a leader.</summary>
    public Knot? Join { get; init; }

    /// <summary>What holds the lure, snap or hook.</summary>
    public required Knot LureKnot { get; init; }

    /// <summary>Swivel, snap and split ring, whichever are in the rig.</summary>
    public IReadOnlyList<Hardware> Hardware { get; init; } = [];

    public HookRating? Hook { get; init; }

    /// <summary>What is fished on it; null when nobody said.</summary>
    public Lure? Lure { get; init; }

    public bool HasSwivel => Hardware.Any(piece => piece.Kind == HardwareKind.Swivel);
}
