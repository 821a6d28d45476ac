using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>A shape in the path language of SVG, moved to a place and scaled.</summary>
internal sealed record ShapeMark(string Path, float X, float Y, float Scale, Ink Ink) : Mark(Ink)
{
    /// <summary>How thick its outline is; null fills it.</summary>
    public float? Outline { get; init; }
}
