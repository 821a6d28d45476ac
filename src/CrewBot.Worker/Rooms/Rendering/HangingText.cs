using Spectre.Console;
using Spectre.Console.Rendering;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>A paragraph under its label: what does not fit the first line goes on below the text, not below the label.</summary>
/// <param name="label">What stands before it; empty for none.</param>
/// <param name="labelStyle">How the label looks.</param>
/// <param name="text">The paragraph.</param>
/// <param name="textStyle">How it looks.</param>
internal sealed class HangingText(string label, Style labelStyle, string text, Style textStyle) : Renderable
{
    /// <summary>Stands for a space at which no line is broken: a private character, which no safe text holds.</summary>
    public const char Tie = '\uE000';

    // A long label would squeeze its text into a narrow column.
    private const int DeepestIndent = 16;
    private const int ShallowIndent = 2;

    protected override IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
    {
        var head = label.Length > 0 ? label.Replace(' ', Tie) + ' ' : "";
        var headWidth = new Segment(head).CellCount();
        var indent = headWidth <= Math.Min(DeepestIndent, maxWidth / 3) ? headWidth : ShallowIndent;

        // The label takes part in the breaking of lines, so the first line gives up the room that the others give to the indent.
        var paragraph = new Paragraph();
        paragraph.Append(head[indent == headWidth ? head.Length.. : ..], labelStyle);
        paragraph.Append(text, textStyle);
        var lines = Segment.SplitLines(((IRenderable)paragraph).Render(options, Math.Max(1, maxWidth - indent)));
        for (var i = 0; i < lines.Count; i++)
        {
            if (indent == headWidth)
            {
                yield return i == 0 ? Shown(new Segment(head, labelStyle)) : Segment.Padding(indent);
            }
            else if (i > 0)
            {
                yield return Segment.Padding(indent);
            }

            foreach (var segment in WithoutTrailingSpace(lines[i]))
            {
                yield return Shown(segment);
            }

            yield return Segment.LineBreak;
        }
    }

    private static IEnumerable<Segment> WithoutTrailingSpace(SegmentLine line) =>
        line.Take(1 + line.FindLastIndex(segment => !string.IsNullOrWhiteSpace(segment.Text)));

    private static Segment Shown(Segment segment) => new(segment.Text.Replace(Tie, ' '), segment.Style);
}
