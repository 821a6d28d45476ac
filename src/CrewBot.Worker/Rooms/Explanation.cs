using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;

namespace CrewBot.Worker.Rooms;

/// <summary>The reasons behind an answer and its figures as workings.</summary>
internal static partial class Explanation
{
    public static Reply Of(Reply answer) => answer.Headline.Length == 0
        ? Reply.Refuse("There is nothing to explain yet: ask first.")
        : new Reply
        {
            Headline = $"Why: {answer.Headline}",
            Lines = [.. answer.Reasons, .. Workings(answer.Figures)],
            Cautions = answer.Cautions,
            Audience = answer.Audience,
        };

    // One line a rig: the figures of a second line share its prefix. Those of the alternatives explain nothing in this answer.
    private static IEnumerable<string> Workings(IReadOnlyList<Figure> figures) => figures
        .Where(figure => !figure.Key.StartsWith("alt", StringComparison.Ordinal))
        .GroupBy(figure => Prefix().Match(figure.Key).Value)
        .Select(rig =>
        {
            var label = rig.Key.Length == 0 ? "Figures" : $"Figures {rig.Key.TrimEnd('.')}";
            return $"{label}: {string.Join(" · ", rig.Select(figure => Working(figure, rig.Key)))}";
        });

    private static string Working(Figure figure, string prefix) =>
        $"{figure.Key[prefix.Length..]} {Rounded(figure.Value)} {figure.Unit}".TrimEnd();

    // Four figures are more than any of the trade's numbers bear; --json has them all.
    private static string Rounded(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 8);
        return Math.Round(value, decimals).ToString("0.########", CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"^[a-z]+[0-9]+\.", RegexOptions.CultureInvariant)]
    private static partial Regex Prefix();
}
