namespace CrewBot.Chat.Commands;

/// <summary>Writes a command the way a person would type it.</summary>
public static class CommandLine
{
    /// <summary>Writes path and options; what it writes reads back as the same command.</summary>
    public static string Write(string path, IEnumerable<KeyValuePair<string, string>> options) =>
        $"/{path}{string.Concat(options.Select(option => $" {option.Key}:{Quoted(option.Value)}"))}";

    private static string Quoted(string text) => text.Contains(' ', StringComparison.Ordinal) ? $"\"{text}\"" : text;
}
