namespace CrewBot.Storage.Trips;

/// <summary>A need that somebody answers for going without.</summary>
/// <param name="Need">The key of the need.</param>
/// <param name="MemberId">Who said so.</param>
public sealed record TripWaiver(string Need, long MemberId);
