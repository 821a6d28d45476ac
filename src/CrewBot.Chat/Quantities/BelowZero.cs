using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads a cold day as it is told: "20 below", "20 degrees below zero", "20C below".</summary>
internal static partial class BelowZero
{
    private const int LeastWords = 2;
    private const int MostWords = 4;

    /// <summary>The same with its minus sign; null when the text says nothing of the kind.</summary>
    public static string? Signed(string text) =>
        Told().Match(text) is { Success: true } told ? $"-{told.Groups["number"].Value}{told.Groups["unit"].Value}" : null;

    /// <summary>Such a temperature among the words from here, and how many they are; without a unit it takes the caller's.</summary>
    public static (string Text, int Words)? At(string[] said, int at, CrewUnits units)
    {
        for (var count = Math.Min(MostWords, said.Length - at); count >= LeastWords; count--)
        {
            if (Signed(string.Join(' ', said[at..(at + count)])) is { } signed)
            {
                return (char.IsDigit(signed[^1]) ? signed + QuantityReaders.Air.BareUnit(units) : signed, count);
            }
        }

        return null;
    }

    [GeneratedRegex(
        @"^(?<number>[0-9]{1,2})\s*(?:°|deg(?:rees?)?)?\s*(?<unit>[cf])?\s*below(?:\s+zero)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Told();
}
