using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Trips;

/// <summary>Lays out a card: headings and lines, with air to read it by headlamp.</summary>
internal static class CardSheet
{
    private const float Indent = 26;
    private const float Width = Sheet.Width - (2 * Sheet.Margin);

    public static Sheet LayOut(CardPicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Title(picture.Title);
        foreach (var section in picture.Sections)
        {
            sheet.Stroke(Sheet.Margin, top + 4, Sheet.Width - Sheet.Margin, top + 4, 2, Ink.Rule);
            top = Heading(sheet, section, top + 16);
            var indent = section.Lines.Count > 1 ? Indent : 0;
            foreach (var line in section.Lines)
            {
                if (indent > 0)
                {
                    sheet.Add(new ShapeMark(Charts.Markers.Disc, Sheet.Margin + 8, top + (Sheet.PlainText * Lettering.LineHeight / 2), 0.45f, Ink.Quiet));
                }

                top = sheet.Write(line, Sheet.Margin + indent, top, Width - indent, Sheet.PlainText) + 6;
            }

            top += 10;
        }

        sheet.Height = Cautions.Draw(sheet, picture.Caution, top + 8) + Sheet.Margin;
        return sheet;
    }

    private static float Heading(Sheet sheet, CardSection section, float top) => section.IsBad
        ? Cautions.Draw(sheet, section.Heading, top) + 4
        : sheet.Write(section.Heading, Sheet.Margin, top, Width, Sheet.PlainText, Weight.SemiBold, Ink.Accent) + (section.Heading.Length > 0 ? 4 : 0);
}
