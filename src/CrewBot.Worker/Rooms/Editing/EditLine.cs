using System.Globalization;

namespace CrewBot.Worker.Rooms.Editing;

/// <summary>A line being written: its text and where the cursor stands. Every operation gives a new line.</summary>
/// <param name="Text">What is written so far.</param>
/// <param name="Cursor">Before which character new text goes; never inside what shows as one character.</param>
internal readonly record struct EditLine(string Text, int Cursor)
{
    public static readonly EditLine Empty = new("", 0);

    /// <summary>A line with the cursor at its end.</summary>
    public static EditLine Of(string text) => new(text, text.Length);

    public string BeforeCursor => Text[..Cursor];

    /// <summary>Writes text at the cursor; characters that only a terminal could mean are left out.</summary>
    public EditLine Insert(string text)
    {
        var plain = string.Concat(text.Where(character => !char.IsControl(character)));
        return new EditLine(Text.Insert(Cursor, plain), Cursor + plain.Length);
    }

    public EditLine Left() => this with { Cursor = Before(Cursor) };

    public EditLine Right() => this with { Cursor = After(Cursor) };

    public EditLine Home() => this with { Cursor = 0 };

    public EditLine End() => this with { Cursor = Text.Length };

    /// <summary>Moves to the start of this word, or of the one before.</summary>
    public EditLine WordLeft() => this with { Cursor = WordStartBefore(Cursor) };

    /// <summary>Moves past the end of this word, or of the one after.</summary>
    public EditLine WordRight() => this with { Cursor = WordEndAfter(Cursor) };

    public EditLine DeleteBack() => Without(Before(Cursor), Cursor);

    public EditLine DeleteForward() => Without(Cursor, After(Cursor));

    public EditLine DeleteWordBack() => Without(WordStartBefore(Cursor), Cursor);

    public EditLine DeleteWordForward() => Without(Cursor, WordEndAfter(Cursor));

    public EditLine DeleteToStart() => Without(0, Cursor);

    public EditLine DeleteToEnd() => Without(Cursor, Text.Length);

    private EditLine Without(int from, int to) => new(Text.Remove(from, to - from), from);

    private int Before(int position) =>
        StringInfo.ParseCombiningCharacters(Text).LastOrDefault(start => start < position);

    private int After(int position) =>
        position < Text.Length ? position + StringInfo.GetNextTextElementLength(Text, position) : position;

    private int WordStartBefore(int position)
    {
        while (position > 0 && !IsWord(position - 1))
        {
            position--;
        }

        while (position > 0 && IsWord(position - 1))
        {
            position--;
        }

        return position;
    }

    private int WordEndAfter(int position)
    {
        while (position < Text.Length && !IsWord(position))
        {
            position++;
        }

        while (position < Text.Length && IsWord(position))
        {
            position++;
        }

        return position;
    }

    // Names and values are words of their own: a jump stops at the colon between them.
    private bool IsWord(int position) => !char.IsWhiteSpace(Text[position]) && Text[position] is not (':' or '"' or '/');
}
