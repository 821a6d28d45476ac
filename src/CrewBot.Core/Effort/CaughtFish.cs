namespace CrewBot.Core.Effort;

/// <summary>A fish as far as catch rates need it.</summary>
/// <param name="Angler">Number of the angler.</param>
/// <param name="Species">Key of the species.</param>
/// <param name="Presentation">Key of the presentation that took it; null when nobody said.</param>
/// <param name="At">When.</param>
public sealed record CaughtFish(long Angler, string Species, string? Presentation, DateTimeOffset At);
