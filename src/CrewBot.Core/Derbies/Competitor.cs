namespace CrewBot.Core.Derbies;

/// <summary>Who is ranked: an angler, or a team by its name.</summary>
/// <param name="Angler">Number of the angler; null for a team.</param>
/// <param name="Team">Name of the team; null for an angler.</param>
public sealed record Competitor(long? Angler, string? Team = null);
