namespace CrewBot.Core.Pictures;

/// <summary>The parts of a rig that a diagram tells apart.</summary>
public enum PartKind
{
    Rod,

    /// <summary>Line that is woven, and limp: drawn heavy.</summary>
    Braid,

    /// <summary>Line of one strand.</summary>
    Strand,

    /// <summary>Line that teeth can't cut.</summary>
    Wire,

    Knot,

    Swivel,

    Snap,

    SplitRing,

    /// <summary>A shot pinched on the line.</summary>
    Shot,

    /// <summary>A sinker that slides.</summary>
    Sinker,

    /// <summary>A head with one hook moulded in.</summary>
    Jig,

    /// <summary>Metal that flutters, with a treble at its end.</summary>
    Spoon,

    /// <summary>A body shaped like a fish, with hooks under it.</summary>
    Swimmer,

    Hook,

    Treble,

    /// <summary>A whole dead fish on two trebles.</summary>
    DeadFish,

    Bait,
}
