namespace CrewBot.Core.Pictures;

/// <summary>What was reported of the ice, spot by spot.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Spots">The spots, in the order they are shown.</param>
/// <param name="Required">Thicknesses that published rules ask for, thinnest first.</param>
/// <param name="Time">The days that are shown.</param>
/// <param name="Caution">What to beware of; it is part of the picture, which travels without the words beside it.</param>
public sealed record IceBoardPicture(
    string AlternativeText, string Title, IReadOnlyList<IceSpot> Spots, IReadOnlyList<RequiredIce> Required, TimeAxis Time, string Caution)
    : PictureData(AlternativeText)
{
    /// <summary>What a bar stands for.</summary>
    public required string Reading { get; init; }

    /// <summary>What there is beyond the spots that are shown; empty for nothing.</summary>
    public string Beyond { get; init; } = "";

    /// <summary>Whose rules the bars and the lines follow.</summary>
    public required string Sources { get; init; }
}
