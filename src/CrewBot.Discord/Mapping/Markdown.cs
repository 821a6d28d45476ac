using System.Globalization;
using System.Text;

namespace CrewBot.Discord.Mapping;

/// <summary>Makes any text show as it was written: no layout, no masked links, no mentions, no direction tricks.</summary>
internal static class Markdown
{
    private const string Anywhere = @"\*_~|`[]<";
    private const string AtLineStart = "#-+>";
    private const char ZeroWidthSpace = '\u200B';

    public static string Escape(string text)
    {
        var shown = new StringBuilder(text.Length + 8);
        var lineStart = true;
        var digits = false; // since the line's start: "1." would begin a list
        foreach (var character in text)
        {
            if (!IsShown(character))
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

    private static bool IsShown(char character) =>
        character is '\n'
        || (!char.IsControl(character)
            && char.GetUnicodeCategory(character) is not (UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            && character is not ((>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F'));
}
