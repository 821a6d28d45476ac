namespace CrewBot.Core.Pictures;

/// <summary>A contest over time: how the best got where they are.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Unit">What totals are counted in, and whether it is still on.</param>
/// <param name="Racers">The best, best first; at most six are drawn.</param>
/// <param name="Time">From the start to now or the end.</param>
public sealed record RacePicture(string AlternativeText, string Title, string Unit, IReadOnlyList<Racer> Racers, TimeAxis Time)
    : PictureData(AlternativeText);
