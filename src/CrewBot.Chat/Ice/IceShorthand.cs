using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Ice;

/// <summary>Reads "Loon Basin north bay 5in clear 2in white 10 min ago" as options of a report.</summary>
public sealed class IceShorthand(IceOptions options) : Shorthand
{
    // "half an hour ago"
    private const int LongestTime = 4;

    private static readonly HashSet<string> Fillers = ["a", "an", "and", "at", "of", "the", "ice", "with", "on", "in", "off", "there", "is"];

    private static readonly Dictionary<string, string> Hazards =
        IceWords.Hazards.Concat(IceWords.OtherHazards).ToDictionary(named => named.Word, named => IceWords.Of(named.Value));

    private static readonly Dictionary<string, string> Kinds =
        IceWords.Kinds.Concat(IceWords.OtherKinds).ToDictionary(named => named.Word, named => IceWords.Of(named.Value));

    public override CommandOption<string> Words => options.Ask;

    public override Expansion Expand(string words, Caller caller)
    {
        // A range of thickness counts as its lower end.
        var said = SaidWords.AsWritten(LengthRange.ToLower(words));
        var waters = WordMatch.WordsOf(caller.Waters);
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

            if ((Time(said, at, caller.Units, heard) ?? Thickness(said, at, heard) ?? Hazard(said, at, hazards) ?? Kind(said, at, heard) ?? Certainty(said[at], heard)) is { } taken)
            {
                at += taken;
                mayNameSpot = false;
                continue;
            }

            // What follows the water and is nothing else names the spot in it.
            (mayNameSpot ? spot : missed).Add(said[at++]);
        }

        if (spot.Count > 0)
        {
            heard.Add(new(options.Spot.Name, string.Join(' ', spot)));
        }

        if (hazards.Count > 0)
        {
            heard.Add(new(options.Hazard.Name, string.Join(", ", hazards.Distinct())));
        }

        return new Expansion(heard, [.. missed.Where(word => !Fillers.Contains(word.ToLowerInvariant()))]);
    }

    private int? Time(string[] said, int at, CrewUnits units, List<KeyValuePair<string, string>> heard)
    {
        for (var count = Math.Min(LongestTime, said.Length - at); count >= 1; count--)
        {
            var text = string.Join(' ', said[at..(at + count)]);
            if (options.When.Reader.Read(text, units).Fault is null)
            {
                heard.Add(new(options.When.Name, text));
                return count;
            }
        }

        return null;
    }

    // A number without a unit is passed on as it is, and the option asks which unit.
    private int? Thickness(string[] said, int at, List<KeyValuePair<string, string>> heard)
    {
        if (NumberText.Split(said[at]) is not { } split)
        {
            return null;
        }

        var hasUnit = UnitWord.Find(split.After) is not null;
        var takesNext = split.After.Length == 0 && at + 1 < said.Length && UnitWord.Find(said[at + 1]) is not null;
        if (split.After.Length > 0 && !hasUnit)
        {
            return null;
        }

        var count = takesNext ? 2 : 1;
        var text = string.Join(' ', said[at..(at + count)]);
        if (UnitWord.Find(takesNext ? said[at + 1] : split.After) is { Dimension: Dimension.Temperature })
        {
            heard.Add(new(options.Air.Name, text));
            return count;
        }

        var next = at + count < said.Length && said[at + count].Equals("of", StringComparison.OrdinalIgnoreCase) ? at + count + 1 : at + count;
        var (option, named) = next < said.Length ? OptionFor(said[next]) : (options.Total, false);
        heard.Add(new(option.Name, text));
        return named ? next + 1 - at : count;
    }

    private (CommandOption Option, bool IsNamed) OptionFor(string word) => word.ToLowerInvariant() switch
    {
        "clear" or "black" or "blue" => (options.Clear, true),
        "white" or "milky" => (options.White, true),
        "snow" => (options.Snow, true),
        "slush" => (options.Slush, true),
        _ => (options.Total, false),
    };

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
