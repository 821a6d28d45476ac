namespace CrewBot.Storage.Boxes;

/// <summary>What somebody owns for the ice.</summary>
public enum BoxKind
{
    /// <summary>Line on a reel.</summary>
    Line,

    /// <summary>Leader material, wire included.</summary>
    Leader,

    Lure,

    Hook,

    /// <summary>What makes the hole, by its diameter.</summary>
    Auger,

    /// <summary>By how many it seats.</summary>
    Shelter,

    Heater,

    Sled,

    /// <summary>Picks, rope, throw bag.</summary>
    RescueKit,
}
