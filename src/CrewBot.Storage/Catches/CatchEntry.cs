using CrewBot.Core.Fish;

namespace CrewBot.Storage.Catches;

/// <summary>A fish as it was logged. Only the species, the angler and the instant are always known.</summary>
public sealed record CatchEntry
{
    /// <summary>Number of the angler.</summary>
    public required long MemberId { get; init; }

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>When it was caught, by the angler's clock.</summary>
    public required DateTimeOffset CaughtAt { get; init; }

    /// <summary>When it was logged.</summary>
    public required DateTimeOffset LoggedAt { get; init; }

    public ExactLength? Length { get; init; }

    /// <summary>What a scale said; an estimate is never stored.</summary>
    public ExactMass? Weight { get; init; }

    public ExactLength? Girth { get; init; }

    /// <summary>Depth of the water.</summary>
    public ExactLength? Depth { get; init; }

    public long? WaterId { get; init; }

    /// <summary>Number of the spot within the water.</summary>
    public long? SpotId { get; init; }

    /// <summary>Key of the presentation.</summary>
    public string? Presentation { get; init; }

    public string? Lure { get; init; }

    public string? Mood { get; init; }

    /// <summary>Which of the angler's lines.</summary>
    public long? Line { get; init; }

    /// <summary>Kept, or released; null when nobody said.</summary>
    public bool? Kept { get; init; }

    public string? Note { get; init; }

    /// <summary>The platform's reference to a photo.</summary>
    public string? Photo { get; init; }

    /// <summary>The SHA-256 of the photo in hexadecimal digits; null when nobody could look at it.</summary>
    public string? PhotoHash { get; init; }
}
