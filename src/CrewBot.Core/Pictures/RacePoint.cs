namespace CrewBot.Core.Pictures;

/// <summary>A total from an instant on.</summary>
/// <param name="At">The instant.</param>
/// <param name="Total">The total; 0 or more.</param>
public sealed record RacePoint(DateTimeOffset At, double Total);
