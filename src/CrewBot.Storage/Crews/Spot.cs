namespace CrewBot.Storage.Crews;

/// <summary>A place in a water that has a name. It is never shown outside the crew.</summary>
public sealed record Spot(long Id, string Name);
