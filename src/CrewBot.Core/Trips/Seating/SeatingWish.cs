namespace CrewBot.Core.Trips.Seating;

/// <summary>Two people who would like to sit together, or would rather not.</summary>
/// <param name="One">The key of one.</param>
/// <param name="Other">The key of the other.</param>
/// <param name="IsApart">They would rather sit apart.</param>
public sealed record SeatingWish(string One, string Other, bool IsApart = false);
