using System.Buffers;
using System.Text;

namespace CrewBot.Discord.Mapping;

/// <summary>Makes any text show as it was written: no layout, no masked links, no mentions, no direction tricks.</summary>
internal static class Markdown
{
    private const string Anywhere = @"\*_~|`[]<";
    private const string AtLineStart = "#-+>";
    private const char ZeroWidthSpace = '\u200B';

    // Looked for range by range: one set of them all is searched several times as slowly as soon as it holds more than ASCII.
    private static readonly (char First, char Last)[] Hidden =
    [
        ('\u0000', '\u0009'), ('\u000B', '\u001F'), ('\u007F', '\u009F'), // controls, but not the line feed
        ('\u200E', '\u200F'), ('\u2028', '\u202E'), ('\u2066', '\u2069'), // directions, line and paragraph separators
    ];

    private static readonly SearchValues<char> Watched = SearchValues.Create(Anywhere + "@\n");

    public static string Escape(string text) => IsPlain(text) ? text : EscapeEach(text);

    // Nearly every line is: no look at each of its characters.
    private static bool IsPlain(string text) =>
        text is [var first, ..]
        && first != ' ' && !char.IsAsciiDigit(first) && !AtLineStart.Contains(first, StringComparison.Ordinal)
        && !text.AsSpan().ContainsAny(Watched) && !HidesAny(text);

    private static bool HidesAny(ReadOnlySpan<char> text)
    {
        foreach (var (first, last) in Hidden)
        {
            if (text.ContainsAnyInRange(first, last))
            {
                return true;
            }
        }

        return false;
    }

    private static string EscapeEach(string text)
    {
        var shown = new StringBuilder(text.Length + 8);
        var lineStart = true;
        var digits = false; // since the line's start: "1." would begin a list
        foreach (var character in text)
        {
            if (HidesAny([character]))
            {
                continue;
            }

            if (Anywhere.Contains(character, StringComparison.Ordinal)
                || (lineStart && AtLineStart.Contains(character, StringComparison.Ordinal))
                || (digits && character == '.'))
            {
                shown.Append('\\');
            }

            shown.Append(character);
            if (character == '@')
            {
                shown.Append(ZeroWidthSpace);
            }

            digits = char.IsAsciiDigit(character) && (lineStart || digits);
            lineStart = character == '\n' || (lineStart && character == ' ');
        }

        return shown.ToString();
    }
}
