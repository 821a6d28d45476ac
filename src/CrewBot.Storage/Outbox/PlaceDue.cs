namespace CrewBot.Storage.Outbox;

/// <summary>A place where something is still to be said.</summary>
/// <param name="Crew">The key of the crew.</param>
/// <param name="Place">The place.</param>
/// <param name="NextAt">When the pump turns to it.</param>
public sealed record PlaceDue(string Crew, string Place, DateTimeOffset NextAt);
