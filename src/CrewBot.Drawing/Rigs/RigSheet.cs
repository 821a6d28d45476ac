using CrewBot.Core.Pictures;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Rigs;

/// <summary>Lays out a rig: its chain from the rod down, and below it the water it hangs in.</summary>
internal static class RigSheet
{
    private const float Between = 20;

    public static Sheet LayOut(RigPicture picture)
    {
        var sheet = new Sheet();
        var top = sheet.Title(picture.Title);
        var scale = LureScale.For(picture);
        var width = (Sheet.Width - (2 * Sheet.Margin) - (Between * (picture.Rigs.Count - 1))) / picture.Rigs.Count;
        var bottom = top;
        for (var column = 0; column < picture.Rigs.Count; column++)
        {
            var left = Sheet.Margin + (column * (width + Between));
            var end = new RigChain(sheet, scale, left, width).Draw(picture.Rigs[column], top);
            bottom = Math.Max(bottom, end);
        }

        if (picture.Water is { } water)
        {
            bottom = WaterPanel.Draw(sheet, water, bottom + 16);
        }

        sheet.Height = bottom + Sheet.Margin;
        return sheet;
    }
}
