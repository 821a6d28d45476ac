using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Commands;

/// <summary>Leads whoever says another word for a command, or asks what no command answers, to the line to type. It runs nothing.</summary>
public static class Signpost
{
    private const int ShortestVerb = 4;

    /// <summary>What to say to a line that is no command; null when nothing leads from there.</summary>
    public static string? Find(string line, CommandCatalog catalog)
    {
        var plain = line.ToLowerInvariant().Replace('’', '\'');
        if (catalog.Commands.Select(info => info.OnPlainWords?.Invoke(plain)).FirstOrDefault(answer => answer is not null) is { } answered)
        {
            return answered;
        }

        var said = SaidWords.Of(plain.TrimStart('/'));
        // "delete me" is no "delete".
        var meant = catalog.Commands
            .SelectMany(info => info.AlsoSaid.Where(words => Begins(said, words.Split(' '))).Select(words => (Info: info, Words: words)))
            .GroupBy(found => found.Words.Length)
            .MaxBy(found => found.Key)?
            .ToList();
        return meant is null
            ? null
            : $"There is no command {Quoting.Quote(meant[0].Words)}. Nearest: {string.Join(", or ", meant.Select(found => found.Info.Example))}";
    }

    /// <summary>A refusal with what may have been meant instead, for a line without a slash: "ice bord" is a slip, and no report.</summary>
    public static string Beside(string refusal, string line, CommandCatalog catalog)
    {
        var words = line.ToLowerInvariant().Split([' ', '\t'], 3, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2 || words[0][0] == '/' || catalog.TryFind($"{words[0]} {words[1]}", out _))
        {
            return refusal;
        }

        var slip = catalog.Commands.FirstOrDefault(info => info.Family == words[0] && info.Verb.Length >= ShortestVerb && Nearest.IsOneSlipOff(words[1], info.Verb));
        return (slip is null ? Find(line, catalog) : $"Nearest: {slip.Example}") is { } way ? $"{refusal} {way}" : refusal;
    }

    private static bool Begins(string[] said, string[] words) => said.Take(words.Length).SequenceEqual(words);
}
