using System.Globalization;

namespace CrewBot.Core.Ice.Posts;

/// <summary>A place in a post's text, with what stands around it; typographic signs read as the plain ones.</summary>
/// <param name="text">The post.</param>
internal sealed class PostCursor(string text)
{
    public int At { get; set; }

    public string Text => text;

    public bool IsAtEnd => At >= text.Length;

    public char Here => Peek(0);

    /// <summary>Whether no blank stands before it.</summary>
    public bool IsGlued => At > 0 && !char.IsWhiteSpace(Peek(-1));

    /// <summary>The sign some places ahead; the zero character beyond the text.</summary>
    public char Peek(int ahead) => At + ahead >= 0 && At + ahead < text.Length ? Plain(text[At + ahead]) : '\0';

    public string Since(int start) => text[start..At];

    /// <summary>How many digits follow.</summary>
    public int Run(int from = 0)
    {
        var length = 0;
        while (char.IsAsciiDigit(Peek(from + length)))
        {
            length++;
        }

        return length;
    }

    public double Parse(int from, int to) => double.Parse(text.AsSpan(from, to - from), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static char Plain(char sign) => sign switch
    {
        '″' or '“' or '”' or '‟' or '¨' => '"',
        '′' or '’' or '‘' or '`' or '´' => '\'',
        '–' or '—' or '‒' or '−' or '‑' => '-',
        '…' => '.',
        '\u00a0' or '\u2009' or '\u202f' => ' ',
        _ => sign,
    };
}
