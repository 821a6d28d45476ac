using CrewBot.Core.Fish;

namespace CrewBot.Storage.Catches;

/// <summary>An angler's last fish, as far as it says something of the next one.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Species">Key of the species.</param>
/// <param name="CaughtAt">When it was caught.</param>
public sealed record LastCatch(long Number, string Species, DateTimeOffset CaughtAt)
{
    /// <summary>The water's name; null when nobody said.</summary>
    public string? Water { get; init; }

    /// <summary>Depth of the water; null when nobody said.</summary>
    public ExactLength? Depth { get; init; }

    /// <summary>Key of the presentation; null when nobody said.</summary>
    public string? Presentation { get; init; }

    /// <summary>The mood of the fish; null when nobody said.</summary>
    public string? Mood { get; init; }
}
