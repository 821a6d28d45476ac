namespace CrewBot.Core.Pictures;

/// <summary>Who sits in which shelter.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Shelters">The shelters that are hauled.</param>
public sealed record SeatingPicture(string AlternativeText, string Title, IReadOnlyList<PicturedShelter> Shelters)
    : PictureData(AlternativeText);
