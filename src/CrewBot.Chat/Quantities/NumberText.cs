using System.Globalization;
using System.Text.RegularExpressions;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads numbers as people write them: 7.3, 7,3, 1/8, 1 1/2, 1½, -12, minus 12.</summary>
internal static partial class NumberText
{
    private const int MostDigits = 9;
    private const string Vulgar = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    /// <summary>Splits a text into the number it starts with and what follows.</summary>
    /// <returns>Null when it does not start with a number.</returns>
    public static (double Number, bool IsAmbiguous, string After)? Split(string text)
    {
        if (Plain(text) is { } plain)
        {
            return plain;
        }

        var match = Leading().Match(text);
        if (!match.Success)
        {
            return null;
        }

        var sign = match.Groups["sign"].Value is "" or "+" ? 1 : -1;
        var whole = match.Groups["whole"].Value;
        var decimals = match.Groups["decimals"].Value;
        var number = double.Parse($"0{whole}.{decimals}0", NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (match.Groups["above"].Success)
        {
            var below = Parse(match.Groups["below"].Value);
            if (below == 0)
            {
                return null;
            }

            number += Parse(match.Groups["above"].Value) / below;
        }
        else if (match.Groups["vulgar"].Success)
        {
            number += char.GetNumericValue(match.Groups["vulgar"].Value[0]);
        }

        // A comma and three digits is a decimal to one half of the world and a thousand to the other.
        var ambiguous = match.Groups["mark"].Value == "," && decimals.Length == 3 && whole.TrimStart('0').Length is > 0 and <= 3;
        return (sign * number, ambiguous, text[match.Length..].Trim());
    }

    // What most people write, "24ft" or "24 ft", needs no pattern: a few digits, and letters or nothing after them.
    private static (double Number, bool IsAmbiguous, string After)? Plain(string text)
    {
        var end = 0;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        if (end is 0 or > MostDigits)
        {
            return null;
        }

        var after = text[end..].Trim();
        return after.Length == 0 || char.IsAsciiLetter(after[0])
            ? (double.Parse(text.AsSpan(0, end), NumberStyles.None, CultureInfo.InvariantCulture), false, after)
            : null;
    }

    private static double Parse(string digits) => double.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        """^(?<sign>[-+−–]|[Mm]inus(?=\s*[0-9.,]))?\s*(?:(?:(?<whole>[0-9]{1,9})(?:\s+|-))?(?<above>[0-9]{1,4})\s*[/⁄]\s*(?<below>[0-9]{1,4})|(?<whole>[0-9]{0,9})\s?(?<vulgar>["""
        + Vulgar + """])|(?<whole>[0-9]{1,9})(?:(?<mark>[.,])(?<decimals>[0-9]{1,12}))?|(?<mark>[.,])(?<decimals>[0-9]{1,12}))(?![0-9.,/])""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Leading();
}
