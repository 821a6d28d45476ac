namespace CrewBot.Core.Pictures;

/// <summary>One rig, or two side by side, from the rod down to the hook.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Rigs">One or two, left to right.</param>
/// <param name="Ruler">The reader's unit for the ruler beside the lure.</param>
/// <param name="Water">Where the lures hang; null when nobody named a depth.</param>
public sealed record RigPicture(
    string AlternativeText, string Title, IReadOnlyList<PicturedRig> Rigs, RulerUnit Ruler, WaterColumn? Water)
    : PictureData(AlternativeText)
{
    /// <summary>What is wrong with it, worst first.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
