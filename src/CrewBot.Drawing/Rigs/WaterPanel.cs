using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Rigs;

/// <summary>Lays out the water: ice above, bottom below, and each lure at its own depth, to scale.</summary>
internal static class WaterPanel
{
    private const float IceHeight = 42;
    private const float BottomHeight = 42;
    private const float WaterHeight = 256;
    private const float DepthWidth = 190;
    private const float LabelGap = 26;
    private const float Corner = 14;
    private const float LeastInset = 40;
    private const float HoleWidth = 34;

    /// <summary>Draws it.</summary>
    /// <returns>Where it ends.</returns>
    public static float Draw(Sheet sheet, WaterColumn water, float top)
    {
        var (left, right) = (Sheet.Margin, Sheet.Width - Sheet.Margin);
        var surface = top + IceHeight;
        var bed = surface + WaterHeight;
        sheet.Add(new FillMark(new Box(left, top, right, surface), Corner, Ink.Ice));
        sheet.Add(new FillMark(new Box(left, bed, right, bed + BottomHeight), Corner, Ink.Bottom));
        sheet.Add(new FillMark(new Box(left, bed, right, bed + Corner), 0, Ink.Bottom));
        sheet.Add(new FillMark(new Box(left, surface - Corner, right, surface), 0, Ink.Ice));
        sheet.Add(new FillMark(new Box(left, surface, right, bed), 0, Ink.Water));
        sheet.WriteRight("ice", right - 14, top + 5, DepthWidth, Sheet.SmallText, on: Ink.Ice);
        sheet.WriteRight("bottom", right - 14, bed + 5, DepthWidth, Sheet.SmallText, on: Ink.Bottom);
        DrawDepth(sheet, water, surface, bed, right);

        var inset = water.Lures.Count == 1 ? RigChain.LineX : LeastInset;
        var lane = (right - left - DepthWidth) / water.Lures.Count;
        for (var index = 0; index < water.Lures.Count; index++)
        {
            var lure = water.Lures[index];
            var y = surface + (float)(lure.Down / water.Depth * WaterHeight);
            Hang(sheet, lure.Label, left + (index * lane) + inset, lane - inset - LabelGap, top, surface, Math.Clamp(y, surface + 8, bed));
        }

        return bed + BottomHeight;
    }

    private static void DrawDepth(Sheet sheet, WaterColumn water, float surface, float bed, float right)
    {
        var x = right - 24;
        var middle = (surface + bed) / 2;
        const float Half = Sheet.SmallText * Lettering.LineHeight / 2;
        sheet.Stroke(x, surface + 8, x, middle - Half - 6, 2.5f, Ink.Quiet);
        sheet.Stroke(x, middle + Half + 6, x, bed - 8, 2.5f, Ink.Quiet);
        sheet.Stroke(x - 9, surface + 8, x + 9, surface + 8, 2.5f, Ink.Quiet);
        sheet.Stroke(x - 9, bed - 8, x + 9, bed - 8, 2.5f, Ink.Quiet);
        sheet.WriteRight(water.DepthLabel, right - 14, middle - Half, DepthWidth - 14, Sheet.SmallText, on: Ink.Water);
    }

    private static void Hang(Sheet sheet, string label, float x, float width, float top, float surface, float y)
    {
        sheet.Add(new FillMark(new Box(x - (HoleWidth / 2), top, x + (HoleWidth / 2), surface + 1), 0, Ink.Water));
        sheet.Stroke(x, top - 8, x, y - 28, 3, Ink.Tackle);
        sheet.Add(new ShapeMark(Signs.Hung, x, y, 1, Ink.Accent));
        var lines = Lettering.Wrap(label, Sheet.SmallText, Weight.Regular, width - LabelGap).Count;
        var height = lines * Sheet.SmallText * Lettering.LineHeight;
        var above = y - height - 4;
        var room = surface + WaterHeight - height - 4;
        sheet.Write(label, x + LabelGap, above > surface + 6 ? above : Math.Min(y + 8, room), width - LabelGap, Sheet.SmallText, on: Ink.Water);
    }
}
