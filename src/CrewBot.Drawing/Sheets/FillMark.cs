using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>A filled rectangle.</summary>
internal sealed record FillMark(Box Box, float Radius, Ink Ink) : Mark(Ink);
