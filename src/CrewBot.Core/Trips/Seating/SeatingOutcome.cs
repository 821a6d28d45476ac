namespace CrewBot.Core.Trips.Seating;

/// <summary>A seating, or what stands in its way.</summary>
/// <param name="Plan">Null when not everybody can sit.</param>
/// <param name="Obstacle">In a sentence, what stands in the way; null when everybody sits.</param>
public sealed record SeatingOutcome(SeatingPlan? Plan, string? Obstacle);
