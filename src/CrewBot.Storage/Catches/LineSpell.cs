using CrewBot.Core.Fish;

namespace CrewBot.Storage.Catches;

/// <summary>Lines of one angler in the water.</summary>
/// <param name="Number">Its number within the crew.</param>
/// <param name="Water">The water's name; null when nobody said.</param>
/// <param name="Presentation">Key of the presentation; null when nobody said.</param>
/// <param name="Lines">How many lines.</param>
/// <param name="DownAt">Since when, by the angler's clock.</param>
/// <param name="UpAt">Until when; null while they are down.</param>
public sealed record LineSpell(long Number, string? Water, string? Presentation, int Lines, DateTimeOffset DownAt, DateTimeOffset? UpAt)
{
    /// <summary>How willing the fish were; null when nobody said.</summary>
    public string? Mood { get; init; }

    /// <summary>Depth of the water; null when nobody said.</summary>
    public ExactLength? Depth { get; init; }
}
