using System.Text.RegularExpressions;
using SkiaSharp;

namespace CrewBot.Drawing.Fonts;

/// <summary>Measures and breaks text in the one family that pictures are lettered in.</summary>
internal static partial class Lettering
{
    /// <summary>From one line's top to the next, as a share of the size.</summary>
    public const float LineHeight = 1.25f;

    /// <summary>How far under a line's top its letters stand, as a share of the size.</summary>
    public const float Ascent = 0.97f;

    private const string Tie = "\u00a0";

    private static readonly SKTypeface Regular = FontFile.Open("Inter-Regular.ttf");
    private static readonly SKTypeface SemiBold = FontFile.Open("Inter-SemiBold.ttf");

    /// <summary>A font of a size; whoever asks for it disposes of it.</summary>
    public static SKFont Font(float size, Weight weight) => new(weight == Weight.Regular ? Regular : SemiBold, size)
    {
        Edging = SKFontEdging.Antialias,
        Subpixel = true,
    };

    /// <summary>Whether every character has a glyph: the promise that no empty box is drawn.</summary>
    public static bool CanWrite(string text)
    {
        using var font = Font(1, Weight.Regular);
        return font.ContainsGlyphs(text);
    }

    public static float Width(string text, float size, Weight weight)
    {
        using var font = Font(size, weight);
        return font.MeasureText(text);
    }

    /// <summary>Breaks text at its spaces so that each line fits; a word that is too long alone is cut with an ellipsis.</summary>
    public static IReadOnlyList<string> Wrap(string text, float size, Weight weight, float width)
    {
        using var font = Font(size, weight);
        var lines = new List<string>();
        foreach (var word in Tied().Replace(Written(text, font), Tie).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = lines.Count == 0 ? word : $"{lines[^1]} {word}";
            if (lines.Count > 0 && font.MeasureText(longer) <= width)
            {
                lines[^1] = longer;
            }
            else
            {
                lines.Add(Cut(word, font, width));
            }
        }

        return [.. lines.Select(line => line.Replace(Tie, " ", StringComparison.Ordinal))];
    }

    /// <summary>Shortens text to one line.</summary>
    public static string OneLine(string text, float size, Weight weight, float width)
    {
        using var font = Font(size, weight);
        return Cut(Written(text, font), font, width);
    }

    // A number is not parted from its unit.
    [GeneratedRegex(@"(?<=\d) (?=(?:in|ft|lb|oz|mm|cm|m|g|kg)\b)", RegexOptions.CultureInvariant)]
    private static partial Regex Tied();

    // A name may be written in letters that the family does not have: a question mark says so, an empty box would not.
    private static string Written(string text, SKFont font) => font.ContainsGlyphs(text)
        ? text
        : string.Concat(text.EnumerateRunes().Select(rune => font.ContainsGlyph(rune.Value) ? rune.ToString() : "?"));

    private static string Cut(string text, SKFont font, float width)
    {
        if (font.MeasureText(text) <= width)
        {
            return text;
        }

        var kept = text.Length - 1;
        while (kept > 1 && font.MeasureText($"{text[..kept]}…") > width)
        {
            kept--;
        }

        return $"{text[..kept].TrimEnd()}…";
    }
}
