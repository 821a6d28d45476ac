using System.Buffers;
using System.Text;

namespace CrewBot.Discord.Mapping;

/// <summary>Makes any text show as it was written: no layout, no masked links, no mentions, no direction tricks.</summary>
internal static class Markdown
{
    private const string Anywhere = @"\*_~|`[]<";
    private const string AtLineStart = "#-+>";
    private const char ZeroWidthSpace = '\u200B';

    private static readonly char[] Unshown =
    [
        .. Range('\u0000', '\u0009'), .. Range('\u000B', '\u001F'), .. Range('\u007F', '\u009F'), // controls, but not the line feed
        '\u200E', '\u200F', .. Range('\u2028', '\u202E'), .. Range('\u2066', '\u2069'), // directions, line and paragraph separators
    ];

    private static readonly SearchValues<char> Hidden = SearchValues.Create(Unshown);
    private static readonly SearchValues<char> WatchedAscii = SearchValues.Create([.. Unshown.Where(char.IsAscii), .. Anywhere, '@', '\n']);

    public static string Escape(string text) => IsPlain(text) ? text : EscapeEach(text);

    // Nearly every line is: no look at each of its characters. A set of ASCII alone is searched for quickest.
    private static bool IsPlain(string text) =>
        text is [var first, ..]
        && first != ' ' && !char.IsAsciiDigit(first) && !AtLineStart.Contains(first, StringComparison.Ordinal)
        && !text.AsSpan().ContainsAny(WatchedAscii)
        && !(text.AsSpan().ContainsAnyExceptInRange('\u0000', '\u007E') && text.AsSpan().ContainsAny(Hidden));

    private static string EscapeEach(string text)
    {
        var shown = new StringBuilder(text.Length + 8);
        var lineStart = true;
        var digits = false; // since the line's start: "1." would begin a list
        foreach (var character in text)
        {
            if (Hidden.Contains(character))
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

    private static IEnumerable<char> Range(char first, char last) =>
        Enumerable.Range(first, last - first + 1).Select(code => (char)code);
}
