using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>A line through points.</summary>
internal sealed record StrokeMark(IReadOnlyList<(float X, float Y)> Points, float Width, Ink Ink) : Mark(Ink)
{
    /// <summary>Lengths of dash and gap; null draws through.</summary>
    public (float Dash, float Gap)? Dashes { get; init; }
}
