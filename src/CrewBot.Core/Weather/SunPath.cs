namespace CrewBot.Core.Weather;

/// <summary>When the sun passes a height on one day.</summary>
/// <param name="Up">When it comes above; null when it does not.</param>
/// <param name="Down">When it goes below; null when it does not.</param>
/// <param name="AboveAtNoon">Whether it stands above at noon: tells a day that is all light from one that is all dark.</param>
public sealed record SunPath(DateTimeOffset? Up, DateTimeOffset? Down, bool AboveAtNoon);
