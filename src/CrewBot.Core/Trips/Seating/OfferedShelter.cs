namespace CrewBot.Core.Trips.Seating;

/// <summary>A shelter that somebody would haul to the spot.</summary>
/// <param name="Key">Tells shelters apart.</param>
/// <param name="Name">What the crew calls it.</param>
/// <param name="Seats">How many sit in it, tackle and heater in place; 1 or more.</param>
/// <param name="Owner">The key of whose it is, who sits in it when it comes; null when it is nobody's.</param>
public sealed record OfferedShelter(string Key, string Name, int Seats, string? Owner = null);
