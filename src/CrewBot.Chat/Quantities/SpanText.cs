using System.Globalization;
using System.Text.RegularExpressions;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads how long something takes as people say it: "2 hours", "an hour", "half an hour", "1.5 h", "1h30", "90 min".</summary>
internal static partial class SpanText
{
    /// <summary>The span that a text in lower case is; null when it is none.</summary>
    public static TimeSpan? Read(string text)
    {
        var match = Span().Match(text);
        if (!match.Success)
        {
            return null;
        }

        var number = match.Groups["number"] is { Success: true } written ? double.Parse(written.Value, CultureInfo.InvariantCulture)
            : match.Groups["half"].Success ? 0.5
            : 1;
        var isHours = match.Groups["unit"].Value[0] == 'h';
        var rest = match.Groups["rest"] is { Success: true } minutes ? int.Parse(minutes.Value, CultureInfo.InvariantCulture)
            : match.Groups["more"].Success ? 30
            : 0;
        return rest > 0 && !isHours ? null
            : (isHours ? TimeSpan.FromHours(number) : TimeSpan.FromMinutes(number)) + TimeSpan.FromMinutes(rest);
    }

    [GeneratedRegex(@"^(?:(?<number>[0-9]{1,4}(?:\.[0-9]{1,2})?)|(?<half>half )?an?|one) ?(?<unit>m|mins?|minutes?|h|hrs?|hours?)(?:(?: and)? ?(?<rest>[0-9]{1,2}) ?(?:m|mins?|minutes?)?|(?<more> and a half))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Span();
}
