namespace CrewBot.Core.Pictures;

/// <summary>A shelter with its seats.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Seats">How many it has; no fewer than sit in it.</param>
/// <param name="People">Who sits in it.</param>
public sealed record PicturedShelter(string Name, int Seats, IReadOnlyList<string> People);
