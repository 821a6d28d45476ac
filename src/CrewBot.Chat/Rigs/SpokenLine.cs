using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Rigs;

/// <summary>Hears a line with its test in a message, in either order: "braid 6lb", "4 lb mono".</summary>
internal sealed class SpokenLine(RigOptions options, TradeKnowledge knowledge)
{
    private const int MostWordsOfTest = 3;

    private readonly Dictionary<string, string> _materials = WordMatch.WordsOf(knowledge.Lines);

    /// <summary>Takes what is on the reel; a leader is the plan's to choose.</summary>
    /// <returns>How many words it is; null when no line stands there.</returns>
    public int? Take(string[] said, int at, List<KeyValuePair<string, string>> heard, List<string> missed)
    {
        var count = TestAt(said, at) is { } test
            ? test + WordMatch.Longest(said, at + test, _materials)?.Words
            : WordMatch.Longest(said, at, _materials) is { } line ? line.Words + TestAt(said, at + line.Words) : null;
        if (count is not { } words)
        {
            return null;
        }

        var named = string.Join(' ', said[at..(at + words)]);
        if (at + words < said.Length && said[at + words].Equals("leader", StringComparison.OrdinalIgnoreCase))
        {
            missed.Add($"{named} leader");
            return words + 1;
        }

        heard.Add(new(options.Mainline.Name, named));
        return words;
    }

    private static int? TestAt(string[] said, int at)
    {
        for (var count = Math.Min(MostWordsOfTest, said.Length - at); count >= 1; count--)
        {
            if (NumberText.Split(string.Join(' ', said[at..(at + count)])) is { } split && UnitWord.Find(split.After) is { Dimension: Dimension.Weight })
            {
                return count;
            }
        }

        return null;
    }
}
