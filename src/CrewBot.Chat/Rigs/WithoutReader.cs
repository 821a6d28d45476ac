using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Chat.Rigs;

/// <summary>Reads what a rig must do without: a line, a metal, a bait, a presentation, trebles, live bait, wire.</summary>
public sealed class WithoutReader : OptionReader<IReadOnlySet<string>>
{
    private readonly Dictionary<string, string[]> _keys = new(StringComparer.OrdinalIgnoreCase);

    public WithoutReader(TradeKnowledge knowledge)
    {
        Add(["treble", "trebles"], Ban.Treble);
        Add(["live bait"], Ban.LiveBait);
        Add(["wire"], [.. knowledge.Lines.Where(line => line.Use == LineUse.Bite).Select(line => line.Key)]);
        AddAll(knowledge.Lines);
        AddAll(knowledge.LureMaterials);
        AddAll(knowledge.Baits);
        AddAll(knowledge.Presentations);
    }

    /// <summary>Every word that is read.</summary>
    public IEnumerable<string> Words => _keys.Keys;

    public override string Accepts => "materials, baits or hooks to do without, such as lead or braid, trebles";

    public override Reading<IReadOnlySet<string>> Read(string text, CrewUnits units)
    {
        var without = new HashSet<string>();
        var parts = text.Replace(" and ", ",", StringComparison.OrdinalIgnoreCase)
            .Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        foreach (var part in parts)
        {
            if (!_keys.TryGetValue(part, out var keys))
            {
                return new Misread($"{Quoting.Quote(part)} is not known. {Nearest.Offer(part, Words, 3, $"Give {Accepts}.")}");
            }

            without.UnionWith(keys);
        }

        return without.Count > 0 ? without : new Misread($"{Quoting.Quote(text)} names nothing. Give {Accepts}.");
    }

    public override IEnumerable<string> Suggest(string begun) =>
        Words.Where(word => word.StartsWith(begun, StringComparison.OrdinalIgnoreCase));

    private void AddAll<T>(RecordSet<T> records)
        where T : TradeRecord
    {
        foreach (var record in records)
        {
            Add([record.Name, record.Key, .. record.Aliases], record.Key);
        }
    }

    private void Add(IEnumerable<string> words, params string[] keys)
    {
        foreach (var word in words)
        {
            _keys.TryAdd(word, keys);
        }
    }
}
