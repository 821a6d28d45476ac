using System.Globalization;
using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Charts;

/// <summary>Lays out intervals: one bar a row from the low to the high end, a disc at the value.</summary>
internal static class IntervalSheet
{
    private const float RowGap = 26;
    private const float BarHeight = 44;
    private const float NoteGap = 8;
    private const float Arrow = 16;
    private const double MostOverValue = 3; // a bar longer than that many best values says only that little is known
    private const int MostGridLines = 5;

    public static Sheet LayOut(IntervalPicture picture)
    {
        var sheet = new Sheet();
        var (left, right) = (Sheet.Margin + 8, Sheet.Width - Sheet.Margin - 8);
        var top = sheet.Title(picture.Title);
        var most = Math.Min(picture.Rows.Max(row => row.High), Math.Max(MostOverValue * picture.Rows.Max(row => row.Value), picture.Rows.Min(row => row.High)));
        var grid = Steps.Through(most, MostGridLines);
        float X(double value) => left + ((float)(Math.Min(value, grid[^1]) / grid[^1]) * (right - left));

        var bars = new List<(PicturedInterval Row, float Y)>();
        foreach (var row in picture.Rows)
        {
            top = sheet.Write(row.Name, Sheet.Margin, top, Sheet.Width - (2 * Sheet.Margin), Sheet.PlainText, Weight.SemiBold);
            top = sheet.Write(row.Note, Sheet.Margin, top, Sheet.Width - (2 * Sheet.Margin), Sheet.SmallText, ink: Ink.Quiet);
            bars.Add((row, top + NoteGap + (BarHeight / 2)));
            top += NoteGap + BarHeight + RowGap;
        }

        foreach (var value in grid)
        {
            // Only where bars are: through words a line would be in the way.
            bars.ForEach(bar => sheet.Stroke(X(value), bar.Y - (BarHeight / 2), X(value), bar.Y + (BarHeight / 2), 1.5f, Ink.Rule));
            var label = value.ToString("0.###", CultureInfo.InvariantCulture);
            var half = Lettering.Width(label, Sheet.SmallText, Weight.Regular) / 2;
            sheet.WriteMiddle(label, Math.Clamp(X(value), Sheet.Margin + half, Sheet.Width - Sheet.Margin - half), top - RowGap + 4, right - left, Sheet.SmallText, ink: Ink.Quiet);
        }

        bars.ForEach(bar => Bar(sheet, bar.Row, bar.Y, X, isCut: bar.Row.High > grid[^1]));
        top = sheet.Write(picture.Unit, Sheet.Margin, top - RowGap + 8 + (Sheet.SmallText * Lettering.LineHeight), Sheet.Width - (2 * Sheet.Margin), Sheet.SmallText, ink: Ink.Quiet);
        sheet.Height = top + Sheet.Margin;
        return sheet;
    }

    private static void Bar(Sheet sheet, PicturedInterval row, float y, Func<double, float> x, bool isCut)
    {
        var (low, high) = (x(row.Low), x(row.High));
        sheet.Stroke(low, y, high, y, 7, Ink.Tackle);
        sheet.Stroke(low, y - 11, low, y + 11, 4, Ink.Tackle);
        if (isCut)
        {
            sheet.Add(new StrokeMark([(high - Arrow, y - Arrow), (high, y), (high - Arrow, y + Arrow)], 5, Ink.Tackle));
        }
        else
        {
            sheet.Stroke(high, y - 11, high, y + 11, 4, Ink.Tackle);
        }

        sheet.Add(new ShapeMark(Markers.Disc, x(row.Value), y, 1.3f, Ink.Paper) { Outline = 6 });
        sheet.Add(new ShapeMark(Markers.Disc, x(row.Value), y, 1.3f, Ink.Accent));
    }
}
