using System.Globalization;
using System.Text;

namespace CrewBot.Worker.Rooms.Rendering;

/// <summary>Makes text harmless to a terminal: nothing in it can move the cursor, colour, ring, or turn the reading direction.</summary>
internal static class SafeText
{
    private const char Harmless = '\uFFFD';
    private const int ZeroWidthNonJoiner = 0x200C;
    private const int ZeroWidthJoiner = 0x200D;

    /// <summary>The text in one line, with every character that a terminal would act on replaced.</summary>
    public static string Of(string text)
    {
        if (!NeedsWork(text))
        {
            return text;
        }

        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\t' or '\n' or '\r')
            {
                safe.Append(' ');
            }
            else if (Acts(rune))
            {
                safe.Append(Harmless);
            }
            else
            {
                safe.Append(rune);
            }
        }

        return safe.ToString();
    }

    /// <summary>JSON with direction marks and their kin written as escapes: harmless, and the same data.</summary>
    public static string OfJson(string json)
    {
        if (!NeedsWork(json.Replace("\n", "", StringComparison.Ordinal)))
        {
            return json;
        }

        var safe = new StringBuilder(json.Length);
        foreach (var character in json)
        {
            if (character != '\n' && (char.IsSurrogate(character) || Acts(new Rune(character))))
            {
                safe.Append(CultureInfo.InvariantCulture, $"\\u{(int)character:x4}");
            }
            else
            {
                safe.Append(character);
            }
        }

        return safe.ToString();
    }

    // A lone half of a pair comes out of the enumeration as the replacement character.
    private static bool NeedsWork(string text) => text.EnumerateRunes().Any(rune => Acts(rune) || rune.Value == Harmless);

    // Joiners are left: scripts and emoji are spelt with them, and they act on nothing but their neighbours.
    private static bool Acts(Rune rune) =>
        Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.PrivateUse => true,
            UnicodeCategory.Format => rune.Value is not (ZeroWidthJoiner or ZeroWidthNonJoiner),
            _ => false,
        };
}
