using CrewBot.Drawing.Fonts;
using CrewBot.Drawing.Inks;

namespace CrewBot.Drawing.Sheets;

/// <summary>A picture laid out and not yet painted: the same input always gives the same marks.</summary>
internal sealed class Sheet
{
    /// <summary>Pixels across: a phone shows them on some 6 cm.</summary>
    public const float Width = 720;

    /// <summary>The least size of letters: 2 mm on such a phone.</summary>
    public const float SmallText = 26;

    public const float PlainText = 29;
    public const float TitleText = 38;
    public const float Margin = 32;

    private readonly List<Mark> _marks = [];

    public float Height { get; set; }

    public IReadOnlyList<Mark> Marks => _marks;

    public IEnumerable<TextMark> Texts => _marks.OfType<TextMark>();

    public void Add(Mark mark) => _marks.Add(mark);

    /// <summary>Writes text from a left edge, broken to a width.</summary>
    /// <returns>Where the next line would start.</returns>
    public float Write(string text, float left, float top, float width, float size, Weight weight = Weight.Regular, Ink ink = Ink.Text, Ink on = Ink.Paper)
    {
        foreach (var line in Lettering.Wrap(text, size, weight, width))
        {
            Place(line, left, top, size, weight, ink, on);
            top += size * Lettering.LineHeight;
        }

        return top;
    }

    /// <summary>Writes one line that ends at a right edge, cut to a width.</summary>
    public void WriteRight(string text, float right, float top, float width, float size, Weight weight = Weight.Regular, Ink ink = Ink.Text, Ink on = Ink.Paper)
    {
        var line = Lettering.OneLine(text, size, weight, width);
        Place(line, right - Lettering.Width(line, size, weight), top, size, weight, ink, on);
    }

    /// <summary>Writes one line around a middle, cut to a width.</summary>
    public void WriteMiddle(string text, float middle, float top, float width, float size, Weight weight = Weight.Regular, Ink ink = Ink.Text, Ink on = Ink.Paper)
    {
        var line = Lettering.OneLine(text, size, weight, width);
        Place(line, middle - (Lettering.Width(line, size, weight) / 2), top, size, weight, ink, on);
    }

    /// <summary>The title over everything.</summary>
    /// <returns>Where the picture may start.</returns>
    public float Title(string title) =>
        Write(title, Margin, Margin, Width - (2 * Margin), TitleText, Weight.SemiBold) + 14;

    public void Stroke(float fromX, float fromY, float toX, float toY, float width, Ink ink, (float Dash, float Gap)? dashes = null) =>
        Add(new StrokeMark([(fromX, fromY), (toX, toY)], width, ink) { Dashes = dashes });

    private void Place(string line, float left, float top, float size, Weight weight, Ink ink, Ink on) => Add(new TextMark(
        line, new Box(left, top, left + Lettering.Width(line, size, weight), top + (size * Lettering.LineHeight)), size, weight, ink, on));
}
