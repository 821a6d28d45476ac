using CrewBot.Core.Fish;

namespace CrewBot.Storage.Boxes;

/// <summary>A thing that an angler owns. Which figures it has depends on its kind.</summary>
public sealed record Gear
{
    public required BoxKind Kind { get; init; }

    /// <summary>What it is called, as its owner reads it.</summary>
    public required string Name { get; init; }

    /// <summary>Key of what the trade knows it as: a line's material, a lure's presentation, a hook; otherwise null.</summary>
    public string? Record { get; init; }

    /// <summary>Key of what a lure is made of; otherwise null.</summary>
    public string? Material { get; init; }

    /// <summary>What a line's label says it holds, or what a lure weighs; otherwise null.</summary>
    public ExactMass? Mass { get; init; }

    /// <summary>Diameter of the hole that an auger drills; null when nobody said.</summary>
    public ExactLength? Width { get; init; }

    /// <summary>How many a shelter seats; null when nobody said.</summary>
    public int? Seats { get; init; }
}
