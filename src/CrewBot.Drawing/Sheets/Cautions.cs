using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>The caution at the foot of a picture, which travels without the words beside it.</summary>
internal static class Cautions
{
    private const string Sign = "M0 -14L16 13H-16ZM-2 -4L-1 5H1L2 -4ZM0 7A2 2 0 1 0 0 11A2 2 0 1 0 0 7Z";
    private const float Indent = 46;

    /// <summary>Writes it.</summary>
    /// <returns>Where it ends.</returns>
    public static float Draw(Sheet sheet, string caution, float top)
    {
        sheet.Add(new ShapeMark(Sign, Sheet.Margin + 16, top + (Sheet.SmallText * Lettering.LineHeight / 2), 1, Ink.Warning));
        return sheet.Write(caution, Sheet.Margin + Indent, top, Sheet.Width - (2 * Sheet.Margin) - Indent, Sheet.SmallText, Weight.SemiBold, Ink.Warning);
    }
}
