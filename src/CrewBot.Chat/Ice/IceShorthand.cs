using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Ice;

/// <summary>Reads "Loon Basin north bay 5in clear 2in white 10 min ago" as options of a report.</summary>
public sealed class IceShorthand(IceOptions options) : Shorthand
{
    private static readonly HashSet<string> Fillers =
    [
        "a", "an", "and", "at", "of", "the", "ice", "with", "on", "in", "off", "there", "is", "was", "are", "by", "near", "from", "i", "we",
        "got", "have", "had", "found", "drilled", "walked", "about", "around", "top", "it",
    ];

    private static readonly Dictionary<string, string> Hazards =
        IceWords.Hazards.Concat(IceWords.OtherHazards).ToDictionary(named => named.Word, named => IceWords.Of(named.Value));

    private static readonly Dictionary<string, string> Kinds =
        IceWords.Kinds.Concat(IceWords.OtherKinds).ToDictionary(named => named.Word, named => IceWords.Of(named.Value));

    public override CommandOption<string> Words => options.Ask;

    public override Expansion Expand(string words, Caller caller, IEnumerable<string> named)
    {
        var (said, ends) = IceSpeech.Split(words);
        var (layers, waters) = (new IceLayers(options, said, ends), WordMatch.WordsOf(caller.Waters));
        var (heard, missed, spot, hazards) = (new List<KeyValuePair<string, string>>(), new List<string>(), new List<string>(), new List<string>());
        var mayNameSpot = false;
        for (var at = 0; at < said.Length;)
        {
            if (heard.All(option => option.Key != options.Water.Name) && WordMatch.Longest(said, at, waters) is { } water)
            {
                heard.Add(new(options.Water.Name, water.Meaning));
                at += water.Words;
                mayNameSpot = true;
                continue;
            }

            if ((Time(said, at, heard) ?? Denied(said, at, hazards, missed) ?? Guess(said, at, layers, heard) ?? Air(at, layers, heard)
                ?? Holes(said, at, layers, missed) ?? layers.Read(at, heard) ?? Hazard(said, at, hazards) ?? Kind(said, at, heard)
                ?? Certainty(said[at], heard)) is { } taken)
            {
                at += taken;
                mayNameSpot = false;
                continue;
            }

            // What follows the water, or a word of place, and is nothing else names the spot in it.
            if (IceSpeech.IsOfPlace(said, at))
            {
                mayNameSpot = mayNameSpot || spot.Count == 0;
            }
            else
            {
                mayNameSpot = mayNameSpot && !IceSpeech.EndsPlace(said[at]);
                (mayNameSpot ? spot : missed).Add(said[at]);
            }

            at++;
        }

        Gather(heard, spot, hazards);
        return new Expansion(heard, [.. missed.Where(word => !Fillers.Contains(word.ToLowerInvariant()))]);
    }

    // Several thicknesses without a layer are the holes of a walk-out.
    private void Gather(List<KeyValuePair<string, string>> heard, List<string> spot, List<string> hazards)
    {
        var totals = heard.Where(option => option.Key == options.Total.Name).ToList();
        if (totals.Count > 1)
        {
            heard.RemoveAll(totals.Contains);
            heard.Add(new(options.Holes.Name, string.Join(' ', totals.Select(total => total.Value))));
        }

        if (spot.Count > 0)
        {
            heard.Add(new(options.Spot.Name, string.Join(' ', spot)));
        }

        if (hazards.Count > 0)
        {
            heard.Add(new(options.Hazard.Name, string.Join(", ", hazards.Distinct())));
        }
    }

    // A time that can't be read is passed on as it is: left out, old ice would be told as measured just now.
    private int? Time(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        if (SpokenTime.At(said, at, options.When.Reader) is not { } words)
        {
            return null;
        }

        heard.Add(new(options.When.Name, string.Join(' ', said[at..(at + words)])));
        return words;
    }

    // "no cracks" is no crack, and nothing to file either; "no ice" is open water.
    private static int? Denied(string[] said, int at, List<string> hazards, List<string> missed)
    {
        if (!IceSpeech.Denies(said[at]) || at + 1 == said.Length)
        {
            return null;
        }

        if (said[at + 1].Equals("ice", StringComparison.OrdinalIgnoreCase))
        {
            hazards.Add(IceWords.Of(Core.Ice.IceHazard.OpenWater));
            return 2;
        }

        if (WordMatch.Longest(said, at + 1, Hazards) is not { } denied)
        {
            return null;
        }

        missed.Add(string.Join(' ', said[at..(at + 1 + denied.Words)]));
        return 1 + denied.Words;
    }

    // About five inches are not five inches that somebody measured.
    private int? Guess(string[] said, int at, IceLayers layers, List<KeyValuePair<string, string>> heard)
    {
        var isNotMeasured = IceSpeech.Denies(said[at]) && at + 1 < said.Length && said[at + 1].Equals("measured", StringComparison.OrdinalIgnoreCase);
        if (!isNotMeasured && !IceSpeech.Guesses(said[at]) && !(IceSpeech.MayGuess(said[at]) && layers.QuantityAt(at + 1) is not null))
        {
            return null;
        }

        heard.Add(new(options.Hearsay.Name, "guessed"));
        return isNotMeasured ? 2 : 1;
    }

    private int? Air(int at, IceLayers layers, List<KeyValuePair<string, string>> heard)
    {
        if (layers.QuantityAt(at) is not { Unit.Dimension: Dimension.Temperature } air)
        {
            return null;
        }

        heard.Add(new(options.Air.Name, air.Text));
        return air.Words;
    }

    // How many holes there were is said by the holes.
    private static int? Holes(string[] said, int at, IceLayers layers, List<string> missed)
    {
        if (layers.QuantityAt(at) is not { Unit: null } || at + 1 == said.Length || !said[at + 1].StartsWith("hole", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        missed.Add($"{said[at]} {said[at + 1]}");
        return 2;
    }

    private static int? Hazard(string[] said, int at, List<string> hazards)
    {
        if (WordMatch.Longest(said, at, Hazards) is not { } found)
        {
            return null;
        }

        hazards.Add(found.Meaning);
        return found.Words;
    }

    private int? Kind(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        if (heard.Any(option => option.Key == options.Kind.Name) || WordMatch.Longest(said, at, Kinds) is not { } found)
        {
            return null;
        }

        heard.Add(new(options.Kind.Name, found.Meaning));
        return found.Words;
    }

    // Measured, guessed or heard.
    private int? Certainty(string word, List<KeyValuePair<string, string>> heard)
    {
        if (options.Hearsay.Reader.Read(word, CrewUnits.Customary).Fault is not null)
        {
            return null;
        }

        heard.Add(new(options.Hearsay.Name, word));
        return 1;
    }
}
