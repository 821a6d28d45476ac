using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Rigs;

/// <summary>Lays out a rig: its chain from the rod down, and below it the water it hangs in.</summary>
internal static class RigSheet
{
    private const float Between = 20;
    private const int LinesInAColumn = 3;

    public static Sheet LayOut(RigPicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Title(picture.Title);
        var lures = LureScale.For(picture);
        var leaders = LeaderScale.For(picture, RigChain.RowOf(picture.Rigs.Count == 1 ? 1 : LinesInAColumn));
        var width = (Sheet.Width - (2 * Sheet.Margin) - (Between * (picture.Rigs.Count - 1))) / picture.Rigs.Count;
        var bottom = top;
        for (var column = 0; column < picture.Rigs.Count; column++)
        {
            var left = Sheet.Margin + (column * (width + Between));
            var end = new RigChain(sheet, lures, leaders, left, width).Draw(picture.Rigs[column], top);
            bottom = Math.Max(bottom, end);
        }

        foreach (var (note, number) in picture.Notes.Select((note, index) => (note, index + 1)))
        {
            bottom = Note(sheet, note, number, bottom + 14);
        }

        if (picture.Water is { } water)
        {
            bottom = WaterPanel.Draw(sheet, water, bottom + 16);
        }

        sheet.Height = bottom + Sheet.Margin;
        return sheet;
    }

    private static float Note(Sheet sheet, string note, int number, float top)
    {
        const float Indent = 44;
        sheet.Write($"{number}.", Sheet.Margin, top, Indent, Sheet.SmallText, Weight.SemiBold, Ink.Warning);
        return sheet.Write(note, Sheet.Margin + Indent, top, Sheet.Width - (2 * Sheet.Margin) - Indent, Sheet.SmallText);
    }
}
