using System.Globalization;
using System.Text;

namespace CrewBot.Discord.Mapping;

/// <summary>
/// Cuts text to the platform's limits and says that it did. Counts UTF-16 units, the strictest of the ways in which the
/// platform might count, and never cuts inside a visible character or an escape.
/// </summary>
internal static class Shortening
{
    public const string Mark = " … (cut)";

    /// <summary>Cuts escaped text to a length of at least the mark's own.</summary>
    public static string Fit(string text, int limit) =>
        text.Length <= limit ? text : Head(text, limit - Mark.Length) + Mark;

    /// <summary>Joins lines as far as they fit and says how many are missing.</summary>
    public static string FitLines(IReadOnlyList<string> lines, int limit)
    {
        var all = string.Join('\n', lines);
        if (all.Length <= limit)
        {
            return all;
        }

        var kept = new StringBuilder();
        for (var index = 0; index < lines.Count; index++)
        {
            var note = string.Create(CultureInfo.InvariantCulture, $"… (cut: {lines.Count - index} more lines)");
            var next = index + 1 < lines.Count ? Fit(lines[index], limit / 2) : lines[index];
            if (kept.Length + next.Length + 1 + note.Length > limit)
            {
                return kept.Append(note).ToString();
            }

            kept.Append(next).Append('\n');
        }

        return kept.ToString().TrimEnd('\n');
    }

    private static string Head(string text, int length)
    {
        var end = 0;
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext() && elements.ElementIndex + elements.GetTextElement().Length <= length)
        {
            end = elements.ElementIndex + elements.GetTextElement().Length;
        }

        var head = text[..end];
        var backslashes = head.Length - head.TrimEnd('\\').Length;
        return backslashes % 2 == 0 ? head : head[..^1];
    }
}
