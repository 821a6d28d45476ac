namespace CrewBot.Storage.Ice;

/// <summary>A channel that is told of ice.</summary>
/// <param name="Channel">The platform's id of it.</param>
/// <param name="ShowsSpot">Whether its readers may see the exact spot.</param>
public sealed record IceChannel(string Channel, bool ShowsSpot);
