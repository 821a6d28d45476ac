namespace CrewBot.Core.Pictures;

/// <summary>A card to keep on the phone for where there is no signal.</summary>
/// <param name="AlternativeText">Everything on it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Sections">Its parts, top to bottom.</param>
/// <param name="Caution">What to beware of.</param>
public sealed record CardPicture(string AlternativeText, string Title, IReadOnlyList<CardSection> Sections, string Caution)
    : PictureData(AlternativeText);
