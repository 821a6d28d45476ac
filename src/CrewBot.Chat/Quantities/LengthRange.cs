using System.Text.RegularExpressions;

namespace CrewBot.Chat.Quantities;

/// <summary>Finds lengths said as a range in a row of words, with the unit once: 18-22 ft, 4 to 5 inches, 6 or 7".</summary>
internal static partial class LengthRange
{
    /// <summary>The words with each range replaced by its lower end.</summary>
    public static string ToLower(string words) => Replace(words, (one, other) => other < one);

    /// <summary>The words with each range replaced by its upper end.</summary>
    public static string ToUpper(string words) => Replace(words, (one, other) => other > one);

    private static string Replace(string words, Func<double, double, bool> takesOther) => Range().Replace(words, range =>
    {
        var (one, other) = (range.Groups["one"].Value, range.Groups["other"].Value);
        return UnitWord.Find(range.Groups["unit"].Value) is { Dimension: Dimension.Length }
            && NumberText.Split(one) is { } first
            && NumberText.Split(other) is { } second
                ? takesOther(first.Number, second.Number) ? other : one
                : range.Value;
    });

    [GeneratedRegex(
        """(?<![\w.,/-])(?<one>\d+(?:[.,]\d+|[¼½¾])?)\s*(?:-|–|to|or)\s*(?<other>\d+(?:[.,]\d+|[¼½¾])?)(?=\s*(?<unit>['"′″’”]+|[a-z]+))""",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Range();
}
