using CrewBot.Core.Ice;

namespace CrewBot.Storage.Ice;

/// <summary>All that one report says. A walk-out is a series of holes and stays whole.</summary>
public sealed record IcePage
{
    public IReadOnlyList<IceHole> Holes { get; init; } = [];

    /// <summary>Where the series starts.</summary>
    public string? From { get; init; }

    public IReadOnlyList<IceHazard> Hazards { get; init; } = [];

    public IceThickness? Snow { get; init; }

    public IceThickness? Slush { get; init; }

    /// <summary>The air where it was measured, °C.</summary>
    public double? Air { get; init; }

    public string? Note { get; init; }

    /// <summary>A reference to a photo; the photo itself lies where it was posted.</summary>
    public string? Photo { get; init; }

    /// <summary>Whose words it passes on; null for what the filer measured.</summary>
    public IceQuote? Quote { get; init; }

    /// <summary>Whether it is a guess or somebody else's word: it is shown, and nothing is computed from it.</summary>
    public bool IsHearsay { get; init; }
}
