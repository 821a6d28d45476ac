using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>A line of text; its box is as wide as its letters and as high as its line.</summary>
internal sealed record TextMark(string Text, Box Box, float Size, Weight Weight, Ink Ink, Ink On) : Mark(Ink);
