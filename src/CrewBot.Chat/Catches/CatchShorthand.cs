using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Catches;

/// <summary>Reads "walleye 22.5in 24ft jigging spoon released" as options of an entry.</summary>
public sealed class CatchShorthand : Shorthand
{
    private const double Inch = 0.0254;

    // Shallow water is told to the inch; "24ft 9in" is more likely a depth and a fish.
    private const double ToldToTheInch = 10;

    private static readonly HashSet<string> Fillers =
    [
        "a", "an", "and", "at", "in", "on", "the", "with", "of", "from", "deep", "long", "caught", "got", "fish", "mood", "line", "girth",
        "about", "around", "down", "water", "i", "my", "it", "was", "another",
    ];

    // Shorter ones are one slip off other words.
    private const int ShortestSlip = 7;

    private static readonly HashSet<string> Lines = ["line", "rod"];

    private readonly CatchOptions _options;
    private readonly IReadOnlyList<(CommandOption Option, Dictionary<string, string> Words)> _vocabularies;
    private readonly TipUp _tipUp;

    public CatchShorthand(CatchOptions options, TradeKnowledge knowledge)
    {
        _options = options;
        _tipUp = new TipUp(knowledge, options.Species, options.Presentation);
        _vocabularies =
        [
            (options.Species, WordMatch.WordsOf(knowledge.Species)),
            (options.Presentation, _tipUp.Presentations),
            (options.Mood, MoodWords.Reader.Words.ToDictionary(RecordSet.Plain)),
            (options.Fate, CatchOptions.Fates.Words.ToDictionary(RecordSet.Plain)),
            (options.Water, WordMatch.WordsOf(knowledge.Waters)),
        ];
    }

    public override CommandOption<string> Words => _options.Ask;

    public override Expansion Expand(string words, Caller caller, IEnumerable<string> named)
    {
        var vocabularies = _vocabularies.Append((_options.Water, WordMatch.WordsOf(caller.Waters))).ToList();
        var heard = new List<KeyValuePair<string, string>>();
        var missed = new List<string>();
        var said = SaidWords.Of(words);
        // "last night" is refused as a time, unless an option or the message that the words stand in says when.
        var isDated = named.Contains(_options.When.Name);
        for (var at = 0; at < said.Length;)
        {
            at += Time(said, at, SpokenTime.ReadAt(said, at, _options.When.Reader), heard)
                ?? Line(said, at, heard)
                ?? Cold(said, at, caller.Units, heard)
                ?? Quantity(said, at, heard)
                ?? WordMatch.TakePhrase(said, at, heard, vocabularies)
                ?? (isDated ? null : Time(said, at, SpokenTime.UnreadAt(said, at), heard))
                ?? Slip(said[at], heard)
                ?? Other(said[at], missed);
        }

        _tipUp.Settle(heard);
        return new Expansion(heard, missed);
    }

    private int? Time(string[] said, int at, int? words, List<KeyValuePair<string, string>> heard)
    {
        if (words is { } count)
        {
            heard.Add(new(_options.When.Name, string.Join(' ', said[at..(at + count)])));
        }

        return words;
    }

    private int? Line(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        if (!Lines.Contains(said[at].ToLowerInvariant())
            || at + 1 == said.Length
            || !int.TryParse(said[at + 1], NumberStyles.None, CultureInfo.InvariantCulture, out _))
        {
            return null;
        }

        heard.Add(new(_options.Line.Name, said[at + 1]));
        return 2;
    }

    private int? Cold(string[] said, int at, CrewUnits units, List<KeyValuePair<string, string>> heard)
    {
        if (BelowZero.At(said, at, units) is not { } cold)
        {
            return null;
        }

        heard.Add(new(_options.Air.Name, cold.Text));
        return cold.Words;
    }

    private int? Quantity(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        if (TwoUnits.PoundsAndOunces.At(said, at) is { } weighed)
        {
            heard.Add(new(_options.Weight.Name, string.Join(' ', said[at..(at + weighed.Words)])));
            return weighed.Words;
        }

        if (TwoUnits.FeetAndInches.At(said, at) is { } both && (both.Large < ToldToTheInch || MeasuresTheFish(said[..at]) || MeasuresTheFish(said[(at + both.Words)..])))
        {
            heard.Add(new(_options.Depth.Name, string.Join(' ', said[at..(at + both.Words)])));
            return both.Words;
        }

        for (var count = Math.Min(3, said.Length - at); count >= 1; count--)
        {
            var text = string.Join(' ', said[at..(at + count)]);
            if (NumberText.Split(text) is not { } split || UnitWord.Find(split.After) is not { } unit)
            {
                continue;
            }

            var girth = (at > 0 && IsGirth(said[at - 1])) || (at + count < said.Length && IsGirth(said[at + count]));
            if (OptionFor(unit, girth) is { } option)
            {
                heard.Add(new(option.Name, text));
                return count;
            }
        }

        return null;
    }

    private static bool MeasuresTheFish(string[] words) => words.Any(UnitWord.MeasuresFish);

    // Inches and centimetres measure a fish, feet, metres and fathoms the water.
    private CommandOption? OptionFor(UnitWord unit, bool girth) => unit.Dimension switch
    {
        Dimension.Length when girth => _options.Girth,
        Dimension.Length => unit.Factor <= Inch ? _options.Length : _options.Depth,
        Dimension.Weight => _options.Weight,
        Dimension.Temperature => _options.Air,
        _ => null,
    };

    private static bool IsGirth(string word) => word.Equals("girth", StringComparison.OrdinalIgnoreCase);

    // Fingers are cold: a fish or its fate may be one slip off, and what it was read as is said back.
    private int? Slip(string word, List<KeyValuePair<string, string>> heard)
    {
        foreach (var (option, words) in _vocabularies.Where(vocabulary => vocabulary.Option == _options.Species || vocabulary.Option == _options.Fate))
        {
            if (WordMatch.OneSlipOff(word, words, ShortestSlip) is { } meant)
            {
                heard.Add(new(option.Name, meant));
                return 1;
            }
        }

        return null;
    }

    private static int Other(string word, List<string> missed)
    {
        if (!Fillers.Contains(word.ToLowerInvariant()))
        {
            missed.Add(word);
        }

        return 1;
    }
}
