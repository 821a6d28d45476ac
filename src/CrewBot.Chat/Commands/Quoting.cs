using System.Globalization;
using System.Text;

namespace CrewBot.Chat.Commands;

/// <summary>Repeats what a person wrote without letting it do harm in a reply.</summary>
public static class Quoting
{
    private const int LongestShown = 32;

    /// <summary>The text in quotation marks: shortened, without control or direction characters.</summary>
    public static string Quote(string text)
    {
        var shown = new StringBuilder("'");
        var elements = StringInfo.GetTextElementEnumerator(text);
        for (var count = 0; elements.MoveNext(); count++)
        {
            if (count == LongestShown)
            {
                shown.Append('…');
                break;
            }

            var element = elements.GetTextElement();
            shown.Append(IsHarmless(element) ? element : "?");
        }

        return shown.Append('\'').ToString();
    }

    /// <summary>Whether a text holds a character that a person can't have meant to send.</summary>
    public static bool HoldsControl(string text)
    {
        foreach (var character in text)
        {
            if (char.IsControl(character) && character is not ('\t' or '\n' or '\r'))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsHarmless(string element) => element.EnumerateRunes().All(rune =>
        Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Surrogate
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
        && rune.Value is not ((>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0x200E or 0x200F));
}
