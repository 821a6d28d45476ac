using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Rigs;

/// <summary>Reads "walleye 24ft negative in the open -12C" as options of a plan.</summary>
public sealed class RigShorthand : Shorthand
{
    private const double Inch = 0.0254;
    private const double FastestCurrent = 1;
    private const double WiderThanHoles = 1;

    // Shorter ones are one slip off other words: musky off murky, feeding off feeling.
    private const int ShortestFish = 7;
    private const int ShortestMood = 8;

    private static readonly HashSet<string> AlsoBefore = ["also", "plus"];
    private static readonly HashSet<string> AlsoAfter = ["about", "around", "too", "also"];
    private static readonly HashSet<string> Things = ["air", "water", "current", "hole"];
    private static readonly HashSet<string> Caught = ["fish", "fishes"];
    private static readonly Dictionary<string, string> NoBefore =
        new[] { "no", "no more", "without", "out of", "dont have", "dont have any", "have no", "aint got" }.ToDictionary(word => word);

    private static readonly HashSet<string> Rods = ["line", "lines", "rod", "rods"];
    private static readonly List<string> Counts = ["one", "two", "three", "four"];

    private readonly RigOptions _options;
    private readonly IReadOnlyList<(CommandOption Option, Dictionary<string, string> Words)> _vocabularies;
    private readonly Dictionary<string, string> _species;
    private readonly Dictionary<string, string> _moods = MoodWords.Reader.Words.ToDictionary(RecordSet.Plain);
    private readonly Dictionary<string, string> _without;
    private readonly SpokenLine _line;
    private readonly TipUp _tipUp;

    public RigShorthand(RigOptions options, TradeKnowledge knowledge)
    {
        _options = options;
        _species = WordMatch.WordsOf(knowledge.Species);
        _line = new SpokenLine(options, knowledge);
        _tipUp = new TipUp(knowledge, options.Species, options.Presentation);
        _vocabularies =
        [
            (options.Species, _species),
            (options.Presentation, _tipUp.Presentations),
            (options.Mood, _moods),
            (options.Size, RigOptions.Sizes.Words.ToDictionary(word => word)),
            (options.Place, RigOptions.Places.Words.ToDictionary(word => word)),
            (options.Bait, WordMatch.WordsOf(knowledge.Baits)),
            (options.Lake, WordMatch.WordsOf(knowledge.Waters)),
            (options.From, new() { ["my box"] = "box", ["from my box"] = "box", ["from box"] = "box" }),
        ];
        _without = new WithoutReader(knowledge).Words.DistinctBy(RecordSet.Plain).ToDictionary(RecordSet.Plain, word => word);
    }

    public override CommandOption<string> Words => _options.Ask;

    public override Expansion Expand(string words, Caller caller, IEnumerable<string> named)
    {
        var heard = new List<KeyValuePair<string, string>>();
        var also = new List<string>();
        var without = new List<string>();
        var missed = new List<string>();
        var vocabularies = _vocabularies.Append((_options.Lake, WordMatch.WordsOf(caller.Waters))).ToList();
        // Of a range the deep end: the weight that gets down there, and the cautions for it.
        var said = SaidWords.Of(LengthRange.ToUpper(words));
        for (var at = 0; at < said.Length;)
        {
            at += Without(said, at, without)
                ?? AlsoThere(said, at, also)
                ?? CountedRods(said, at, heard)
                ?? _line.Take(said, at, heard, missed)
                ?? Bare(said, at, caller.Units, heard)
                ?? Quantity(said, at, heard, missed)
                ?? WordMatch.TakePhrase(said, at, heard, vocabularies)
                ?? Filler(said[at])
                ?? Slip(said[at], heard)
                ?? Missed(said[at], missed);
        }

        if (!named.Concat(heard.Select(option => option.Key)).Contains(_options.Depth.Name) && LoneDepth(said, missed, caller.Units) is { } lone)
        {
            missed.Remove(lone);
            heard.Add(new(_options.Depth.Name, lone + QuantityReaders.Depth.BareUnit(caller.Units)));
        }

        _tipUp.Settle(heard);
        AddList(heard, _options.AlsoThere, also);
        AddList(heard, _options.Without, without);
        return new Expansion(heard, missed);
    }

    // "perch 18": the one number that nothing else explains, unless a word beside it may say what it counts: "7 pm", "5 fish".
    private static string? LoneDepth(string[] said, List<string> missed, CrewUnits units)
    {
        if (missed.FindAll(word => NumberText.Split(word) is { After: "" }) is not [var lone] || QuantityReaders.Depth.Read(lone, units).Fault is not null)
        {
            return null;
        }

        var at = Array.IndexOf(said, lone);
        return said[Math.Max(0, at - 1)..at].Concat(said.Skip(at + 1).Take(1)).Any(beside => missed.Contains(beside) || Caught.Contains(beside.ToLowerInvariant()))
            ? null
            : lone;
    }

    private static void AddList(List<KeyValuePair<string, string>> heard, CommandOption option, List<string> things)
    {
        if (things.Count > 0)
        {
            heard.Add(new(option.Name, string.Join(", ", things)));
        }
    }

    private int? Without(string[] said, int at, List<string> without)
    {
        var no = WordMatch.Longest(said, at, NoBefore)?.Words ?? 0;
        if (WordMatch.Longest(said, at + no, _without) is not { } match
            || !(no > 0 || (at + match.Words < said.Length && said[at + match.Words].Equals("free", StringComparison.OrdinalIgnoreCase))))
        {
            return null;
        }

        without.Add(match.Meaning);
        return match.Words + Math.Max(no, 1);
    }

    private int? CountedRods(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        var count = Counts.IndexOf(said[at].ToLowerInvariant()) + 1;
        if (count == 0 || at + 1 == said.Length || !Rods.Contains(said[at + 1].ToLowerInvariant()))
        {
            return null;
        }

        heard.Add(new(_options.Lines.Name, count.ToString(CultureInfo.InvariantCulture)));
        return 2;
    }

    private int? AlsoThere(string[] said, int at, List<string> also)
    {
        if (AlsoBefore.Contains(said[at].ToLowerInvariant()) && WordMatch.Longest(said, at + 1, _species) is { } after)
        {
            also.Add(after.Meaning);
            return 1 + after.Words;
        }

        if (WordMatch.Longest(said, at, _species) is { } named
            && at + named.Words < said.Length
            && AlsoAfter.Contains(said[at + named.Words].ToLowerInvariant()))
        {
            also.Add(named.Meaning);
            return named.Words + 1;
        }

        return null;
    }

    // Without a unit it takes the caller's, where what it measures is said; a number below zero can only be the air's.
    private int? Bare(string[] said, int at, CrewUnits units, List<KeyValuePair<string, string>> heard)
    {
        if (BelowZero.At(said, at, units) is { } cold)
        {
            heard.Add(new(_options.Air.Name, cold.Text));
            return cold.Words;
        }

        if (NumberText.Split(said[at]) is not { After: "" } split || (at + 1 < said.Length && UnitWord.Find(said[at + 1]) is not null))
        {
            return null;
        }

        (string Name, string Unit)? of = (at > 0 ? said[at - 1].ToLowerInvariant() : "") switch
        {
            "depth" => (_options.Depth.Name, QuantityReaders.Depth.BareUnit(units)),
            "hole" => (_options.Hole.Name, QuantityReaders.Hole.BareUnit(units)),
            "air" => (_options.Air.Name, QuantityReaders.Air.BareUnit(units)),
            _ => split.Number < 0 ? (_options.Air.Name, QuantityReaders.Air.BareUnit(units)) : null,
        };
        if (of is not { } named)
        {
            return null;
        }

        heard.Add(new(named.Name, said[at] + named.Unit));
        return 1;
    }

    // "24ft 8in hole" is a depth and a hole, "18ft 6in of ice" a depth and what was drilled through.
    private static bool IsOfAnother(string[] said, int at) =>
        said[at..].Select(word => word.ToLowerInvariant()).ToArray() is [var next, .. var rest] && (next == "ice" || (next == "of" && rest is ["ice", ..]) || Things.Contains(next));

    private int? Quantity(string[] said, int at, List<KeyValuePair<string, string>> heard, List<string> missed)
    {
        if (TwoUnits.FeetAndInches.At(said, at) is { } both && !IsOfAnother(said, at + both.Words))
        {
            heard.Add(new(_options.Depth.Name, string.Join(' ', said[at..(at + both.Words)])));
            return both.Words;
        }

        for (var count = Math.Min(3, said.Length - at); count >= 1; count--)
        {
            var text = string.Join(' ', said[at..(at + count)]);
            if (NumberText.Split(text) is not { } split)
            {
                continue;
            }

            if ((Rods.Contains(split.After) ? _options.Lines : split.After == "holes" ? _options.Holes : null) is { } counted)
            {
                heard.Add(new(counted.Name, text.Split(' ')[0]));
                return count;
            }

            if (UnitWord.Find(split.After) is { } unit)
            {
                return Measured(said, at, count, (unit, split.Number), heard, missed);
            }

            if (count == 1)
            {
                missed.Add(text);
                return 1;
            }
        }

        return null;
    }

    private int Measured(
        string[] said, int at, int count, (UnitWord Unit, double Number) quantity, List<KeyValuePair<string, string>> heard, List<string> missed)
    {
        var text = string.Join(' ', said[at..(at + count)]);
        var before = at > 0 ? said[at - 1].ToLowerInvariant() : "";
        var next = at + count < said.Length ? said[at + count].ToLowerInvariant() : "";
        // "24ft hole 8" has named its depth before the hole.
        var isNoHole = quantity.Unit.Dimension == Dimension.Length && quantity.Unit.ToBase(quantity.Number) >= WiderThanHoles;
        var named = Things.Contains(before) ? before : Things.Contains(next) && !(isNoHole && next == "hole") ? next : "";
        if (OptionFor(quantity.Unit, quantity.Number, named) is not { } option)
        {
            missed.Add(text);
            return count;
        }

        heard.Add(new(option.Name, text));
        if (named != next || named.Length == 0)
        {
            return count;
        }

        said[at + count] = ""; // it has named this quantity and names no other
        return count + 1;
    }

    private CommandOption? OptionFor(UnitWord unit, double number, string named) => unit.Dimension switch
    {
        Dimension.Length when named == "hole" => _options.Hole,
        // A bare inch or centimetre measures a fish, a hole or the ice: water is told in feet, metres and fathoms.
        Dimension.Length => unit.Factor > Inch || named == "water" ? _options.Depth : null,
        // What blows faster is the wind, which no rig heeds.
        Dimension.Speed => named == "current" || unit.ToBase(number) <= FastestCurrent ? _options.Current : null,
        // A bare temperature below freezing can only be the air's.
        Dimension.Temperature => named == "water" ? _options.Water
            : named == "air" || unit.ToBase(number) < 0 ? _options.Air
            : null,
        _ => null,
    };

    private static int? Filler(string word) =>
        word.Length == 0 || RigSmallTalk.Holds(word) || Things.Contains(word.ToLowerInvariant()) ? 1 : null;

    // Fingers are cold: a fish or a mood may be one slip off, and what it was read as is said back.
    private int? Slip(string word, List<KeyValuePair<string, string>> heard)
    {
        if (WordMatch.OneSlipOff(word, _species, ShortestFish) is { } species)
        {
            heard.Add(new(_options.Species.Name, species));
            return 1;
        }

        if (WordMatch.OneSlipOff(word, _moods, ShortestMood) is { } mood)
        {
            heard.Add(new(_options.Mood.Name, mood));
            return 1;
        }

        return null;
    }

    private static int Missed(string word, List<string> missed)
    {
        missed.Add(word);
        return 1;
    }
}
