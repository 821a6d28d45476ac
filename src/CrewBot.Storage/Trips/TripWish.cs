namespace CrewBot.Storage.Trips;

/// <summary>Who would sit with whom, or rather not.</summary>
public sealed record TripWish(long One, long Other, bool IsApart);
