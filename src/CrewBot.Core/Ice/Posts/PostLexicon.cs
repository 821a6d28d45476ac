using System.Collections.Frozen;

namespace CrewBot.Core.Ice.Posts;

/// <summary>Looks up what a word can be, whatever its ending and with one slip of the finger.</summary>
internal static class PostLexicon
{
    private const int ShortestMisspelt = 5;
    private const int ShortestMeant = 4;

    // Only words that cannot make a report milder are guessed at: "clean" must not become "clear".
    private const PostWord Guessed =
        PostWord.Unit | PostWord.Slush | PostWord.Crack | PostWord.Ridge | PostWord.Current | PostWord.Overflow | PostWord.Through;

    private static readonly string[] Endings = ["'s", "s", "es", "ed", "d", "ing", "y", "ly"];
    private static readonly FrozenDictionary<string, PostWord> Words = Load();

    // By first letter, which is hardly ever the wrong one.
    private static readonly FrozenDictionary<char, string[]> Guesses = Words
        .Where(word => (word.Value & Guessed) != 0 && word.Key.Length >= ShortestMeant)
        .GroupBy(word => word.Key[0], word => word.Key)
        .ToFrozenDictionary(group => group.Key, group => group.ToArray());

    /// <summary>A word's stem as it stands in the list, and its classes; the word itself and none when nobody knows it.</summary>
    public static (string Stem, PostWord Classes) Find(string word)
    {
        if (Words.TryGetValue(word, out var classes))
        {
            return (word, classes);
        }

        var found = Stems(word).FirstOrDefault(Words.ContainsKey) ?? Misspelt(word);
        return found is null ? (word, PostWord.None) : (found, Words[found]);
    }

    private static string? Misspelt(string word)
    {
        if (word.Length >= ShortestMisspelt && Guesses.TryGetValue(word[0], out var meant))
        {
            foreach (var known in meant)
            {
                if (IsOneSlip(word, known))
                {
                    return known;
                }
            }
        }

        return null;
    }

    private static IEnumerable<string> Stems(string word)
    {
        foreach (var ending in Endings)
        {
            if (word.Length < ending.Length + (ending is "s" ? 2 : 3) || !word.EndsWith(ending, StringComparison.Ordinal))
            {
                continue;
            }

            var stem = word[..^ending.Length];
            yield return stem;
            if (ending is "ed" or "ing" or "y")
            {
                yield return stem + "e";
                if (stem[^1] == stem[^2])
                {
                    yield return stem[..^1];
                }
            }
        }
    }

    // One letter too many, too few or wrong, or two the wrong way round.
    private static bool IsOneSlip(string written, string meant)
    {
        if (Math.Abs(written.Length - meant.Length) > 1)
        {
            return false;
        }

        var same = 0;
        while (same < Math.Min(written.Length, meant.Length) && written[same] == meant[same])
        {
            same++;
        }

        var rest = written.AsSpan(same);
        var wanted = meant.AsSpan(same);
        return rest.Length == wanted.Length
            ? rest.Length < 2 || rest[1..].SequenceEqual(wanted[1..])
                || (rest[0] == wanted[1] && rest[1] == wanted[0] && rest[2..].SequenceEqual(wanted[2..]))
            : rest.Length > wanted.Length ? rest[1..].SequenceEqual(wanted) : rest.SequenceEqual(wanted[1..]);
    }

    private static FrozenDictionary<string, PostWord> Load()
    {
        var words = new Dictionary<string, PostWord>();
        using var reader = new StreamReader(typeof(PostLexicon).Assembly.GetManifestResourceStream("ice-post-words.txt")!);
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith('#'))
            {
                continue;
            }

            var (name, listed) = (line[..line.IndexOf(':', StringComparison.Ordinal)], line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..]);
            foreach (var word in listed.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                words[word] = words.GetValueOrDefault(word) | Enum.Parse<PostWord>(name);
            }
        }

        return words.ToFrozenDictionary();
    }
}
