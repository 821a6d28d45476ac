namespace CrewBot.Core.Pictures;

/// <summary>What a picture shows, its words already in the reader's units. How it looks is for whoever draws it.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it; never empty.</param>
public abstract record PictureData(string AlternativeText);
