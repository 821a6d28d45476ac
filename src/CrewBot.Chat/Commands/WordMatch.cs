using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>Finds the longest run of words that means something, for shorthands.</summary>
internal static class WordMatch
{
    private const int LongestPhrase = 4;

    /// <summary>The longest run from here that is known; null when none is.</summary>
    public static (string Meaning, int Words)? Longest(string[] said, int at, IReadOnlyDictionary<string, string> words)
    {
        for (var count = Math.Min(LongestPhrase, said.Length - at); count >= 1; count--)
        {
            var phrase = RecordSet.Plain(string.Join(' ', said[at..(at + count)]));
            if (words.TryGetValue(phrase, out var meaning)
                || (phrase.EndsWith('s') && words.TryGetValue(phrase[..^1], out meaning))
                || (phrase.EndsWith("es", StringComparison.Ordinal) && words.TryGetValue(phrase[..^2], out meaning)))
            {
                return (meaning, count);
            }
        }

        return null;
    }

    /// <summary>Every word that finds a record, with the record's name.</summary>
    public static Dictionary<string, string> WordsOf<T>(RecordSet<T> records)
        where T : TradeRecord =>
        records.Words.ToDictionary(pair => pair.Key, pair => pair.Value.Name);

    /// <summary>Every name of a crew's waters, with the water's own: as it is written, and as it is heard in a row of words.</summary>
    public static Dictionary<string, string> WordsOf(IReadOnlyList<WaterRules> waters)
    {
        var words = new Dictionary<string, string>();
        foreach (var water in waters)
        {
            foreach (var name in water.Aliases.Append(water.Name))
            {
                words.TryAdd(RecordSet.Plain(name), water.Name);
                words.TryAdd(RecordSet.Plain(string.Join(' ', SaidWords.Of(name))), water.Name);
            }
        }

        return words;
    }

    /// <summary>What a word means that is one slip of the finger off a known one; null when none is so near, or two are.</summary>
    /// <param name="word">One word, as written.</param>
    /// <param name="words">What is known, plain.</param>
    /// <param name="shortest">How many letters a known word must have: many short words are one slip apart.</param>
    public static string? OneSlipOff(string word, IReadOnlyDictionary<string, string> words, int shortest)
    {
        var plain = RecordSet.Plain(word);
        var meanings = words
            .Where(known => known.Key.Length >= shortest && Nearest.IsOneSlipOff(plain, known.Key))
            .Select(known => known.Value)
            .Distinct()
            .ToList();
        return meanings is [var only] ? only : null;
    }

    /// <summary>
    /// Takes the longest phrase that any vocabulary knows as its option; of two options that know it, one that has not been
    /// said: a herring is a fish to catch, and beside a pike it is the bait. Gives how many words it took, or null.
    /// </summary>
    public static int? TakePhrase(
        string[] said, int at, List<KeyValuePair<string, string>> heard, List<(CommandOption Option, Dictionary<string, string> Words)> vocabularies)
    {
        var best = vocabularies
            .Select(vocabulary => (vocabulary.Option, Match: Longest(said, at, vocabulary.Words)))
            .MaxBy(found => (found.Match?.Words ?? 0, heard.All(option => option.Key != found.Option.Name)));
        if (best.Match is not { } match)
        {
            return null;
        }

        heard.Add(new(best.Option.Name, match.Meaning));
        return match.Words;
    }
}
