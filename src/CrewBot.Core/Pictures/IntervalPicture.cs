namespace CrewBot.Core.Pictures;

/// <summary>What was measured, each with how sure it is.</summary>
/// <param name="AlternativeText">What it shows, for whoever can't see it.</param>
/// <param name="Title">What stands above it.</param>
/// <param name="Unit">What is measured: "fish a line-hour".</param>
/// <param name="Rows">Best first; at least one.</param>
public sealed record IntervalPicture(string AlternativeText, string Title, string Unit, IReadOnlyList<PicturedInterval> Rows)
    : PictureData(AlternativeText);
