namespace CrewBot.Chat.Commands;

/// <summary>Writes a command the way a person would type it.</summary>
public static class CommandLine
{
    /// <summary>Writes path and options; what it writes reads back as the same command.</summary>
    public static string Write(string path, IEnumerable<KeyValuePair<string, string>> options) =>
        $"/{path}{string.Concat(options.Select(option => $" {option.Key}:{Quoted(option.Value)}"))}";

    // Raw where it reads back as it is; otherwise in quotation marks, with those inside doubled.
    private static string Quoted(string text) =>
        text.Any(char.IsWhiteSpace) || text.StartsWith("//", StringComparison.Ordinal) || StartsQuotes(text)
            ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : text;

    private static bool StartsQuotes(string text) =>
        text[0] is '"' or '“' || text.Contains(":\"", StringComparison.Ordinal) || text.Contains(":“", StringComparison.Ordinal);
}
