using System.Globalization;
using System.Text;
using CrewBot.Worker.Rooms.Rendering;
using Spectre.Console.Rendering;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>The part of a line that fits a row of the terminal: it slides so that the cursor is always in it.</summary>
/// <param name="Text">What is shown, harmless to the terminal.</param>
/// <param name="CursorColumn">The cursor's column from the start of that text.</param>
internal readonly record struct Viewport(string Text, int CursorColumn)
{
    private const string More = "…";

    /// <summary>Chooses what to show.</summary>
    /// <param name="line">The whole line.</param>
    /// <param name="columns">The room there is, the cursor's own place at the end included; at least 4.</param>
    public static Viewport Of(EditLine line, int columns)
    {
        var before = Cells(line.Text[..line.Cursor]);
        var after = Cells(line.Text[line.Cursor..]);
        var from = before.Count;
        var width = 0;
        while (from > 0 && width + before[from - 1].Width < columns - (from > 1 ? More.Length : 0))
        {
            width += before[--from].Width;
        }

        var shown = new StringBuilder(from > 0 ? More : "");
        var column = width + (from > 0 ? More.Length : 0);
        AppendAll(shown, before.Skip(from));
        AppendFitting(shown, after, columns - 1 - column);
        return new Viewport(shown.ToString(), column);
    }

    private static void AppendFitting(StringBuilder shown, List<(string Text, int Width)> cells, int room)
    {
        var all = cells.Sum(cell => cell.Width);
        if (all <= room)
        {
            AppendAll(shown, cells);
            return;
        }

        var width = 0;
        AppendAll(shown, cells.TakeWhile(cell => (width += cell.Width) <= room - More.Length));
        shown.Append(room > 0 ? More : "");
    }

    private static void AppendAll(StringBuilder shown, IEnumerable<(string Text, int Width)> cells)
    {
        foreach (var (text, _) in cells)
        {
            shown.Append(text);
        }
    }

    // What shows as one character is one cell or two, however many code points spell it.
    private static List<(string Text, int Width)> Cells(string text)
    {
        var cells = new List<(string, int)>();
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = SafeText.Of(elements.GetTextElement());
            cells.Add((element, new Segment(element).CellCount()));
        }

        return cells;
    }
}
