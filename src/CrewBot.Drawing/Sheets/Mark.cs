using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>One thing on a sheet.</summary>
internal abstract record Mark(Ink Ink);

/// <summary>A line of text; its box is as wide as its letters and as high as its line.</summary>
internal sealed record TextMark(string Text, Box Box, float Size, Weight Weight, Ink Ink, Ink On) : Mark(Ink);

/// <summary>A filled rectangle.</summary>
internal sealed record FillMark(Box Box, float Radius, Ink Ink) : Mark(Ink);

/// <summary>A line through points.</summary>
internal sealed record StrokeMark(IReadOnlyList<(float X, float Y)> Points, float Width, Ink Ink) : Mark(Ink)
{
    /// <summary>Lengths of dash and gap; null draws through.</summary>
    public (float Dash, float Gap)? Dashes { get; init; }
}

/// <summary>A shape in the path language of SVG, moved to a place and scaled.</summary>
internal sealed record ShapeMark(string Path, float X, float Y, float Scale, Ink Ink) : Mark(Ink)
{
    /// <summary>How thick its outline is; null fills it.</summary>
    public float? Outline { get; init; }
}
