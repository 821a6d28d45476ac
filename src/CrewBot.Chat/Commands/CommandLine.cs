using System.Text.RegularExpressions;

namespace CrewBot.Chat.Commands;

/// <summary>Writes a command the way a person would type it.</summary>
public static partial class CommandLine
{
    /// <summary>Writes path and options; what it writes reads back as the same command.</summary>
    public static string Write(string path, IEnumerable<KeyValuePair<string, string>> options) =>
        $"/{path}{string.Concat(options.Select(option => $" {Pair(option.Key, option.Value)}"))}";

    /// <summary>Writes one option: <c>presentation:"jigging spoon"</c>.</summary>
    public static string Pair(string name, string value) => $"{name}:{Quoted(value)}";

    /// <summary>Reads what <see cref="Write"/> wrote, without asking whether there is such a command.</summary>
    internal static (string Path, IReadOnlyDictionary<string, string> Options) Read(string written)
    {
        var options = new Dictionary<string, string>();
        var matches = Option().Matches(written);
        foreach (Match match in matches)
        {
            options[match.Groups["name"].Value] = match.Groups["quoted"] is { Success: true } quoted
                ? quoted.Value.Replace("\"\"", "\"", StringComparison.Ordinal)
                : match.Groups["raw"].Value;
        }

        var path = matches.Count > 0 ? written[..matches[0].Index] : written;
        return (path.Trim(' ', '/'), options);
    }

    // Raw where it reads back as it is; otherwise in quotation marks, with those inside doubled.
    private static string Quoted(string text) =>
        text.Any(char.IsWhiteSpace) || text.StartsWith("//", StringComparison.Ordinal) || StartsQuotes(text)
            ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : text;

    private static bool StartsQuotes(string text) =>
        text is ['"' or '“', ..] || text.Contains(":\"", StringComparison.Ordinal) || text.Contains(":“", StringComparison.Ordinal);

    [GeneratedRegex("""(?<=\s)(?<name>[a-z-]+):(?:"(?<quoted>(?:[^"]|"")*)"|(?<raw>\S*))""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Option();
}
