using CrewBot.Core.Pictures;
using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;

namespace CrewBot.Drawing.Charts;

/// <summary>Time from left to right.</summary>
internal sealed record TimeScale(TimeAxis Axis, float Left, float Right)
{
    private const float LeastGap = 14;
    private const float LabelGap = 20; // clear of the label of an axis of values at its foot

    public float At(DateTimeOffset instant) =>
        Left + ((float)Math.Clamp((instant - Axis.From) / (Axis.To - Axis.From), 0, 1) * (Right - Left));

    /// <summary>Draws its marks below a chart, leaving labels out that have no room.</summary>
    /// <returns>Where the labels end.</returns>
    public float Draw(Sheet sheet, float top, float bottom)
    {
        var free = float.MinValue;
        foreach (var tick in Axis.Ticks)
        {
            var x = At(tick.At);
            sheet.Stroke(x, top, x, bottom + 6, 1.5f, Ink.Rule);
            var half = Lettering.Width(tick.Label, Sheet.SmallText, Weight.Regular) / 2;
            var middle = Math.Clamp(x, Sheet.Margin + half, Sheet.Width - Sheet.Margin - half);
            if (middle - half >= free)
            {
                sheet.WriteMiddle(tick.Label, middle, bottom + LabelGap, Right - Left, Sheet.SmallText, ink: Ink.Quiet);
                free = middle + half + LeastGap;
            }
        }

        return bottom + LabelGap + (Sheet.SmallText * Lettering.LineHeight);
    }
}
