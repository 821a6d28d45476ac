using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;

namespace CrewBot.Chat.Ice;

/// <summary>
/// Reads thicknesses with the layers they are of, in whichever order somebody says them: "5in clear 2in white" and "clear 5in,
/// white 2in". Where a layer stands between two thicknesses and may be either's, both are passed on, and it is asked which.
/// </summary>
/// <param name="options">The options of a report.</param>
/// <param name="said">The words.</param>
/// <param name="ends">Behind which of them a comma stands: what it parts does not belong together.</param>
internal sealed class IceLayers(IceOptions options, string[] said, IReadOnlySet<int> ends)
{
    private const int MostWords = 3;

    // What may stand between a thickness and its layer.
    private static readonly HashSet<string> Between = ["of", "ice"];

    /// <summary>Reads what starts at a word.</summary>
    /// <returns>How many words were taken; null where no thickness starts.</returns>
    public int? Read(int at, List<KeyValuePair<string, string>> heard)
    {
        var run = RunFrom(at);
        if (!run.Any(part => part.Layer is null) || (run is [{ Layer: not null }, .., { Layer: not null }]))
        {
            return null;
        }

        if (run is [{ Layer: { } first }, ..])
        {
            heard.Add(new(first.Name, run[1].Text));
            return run[1].End - at;
        }

        var (layer, claimed) = run.Count > 1 ? (run[1].Layer!, run.Count % 2 == 0) : (options.Total, false);
        heard.Add(new(layer.Name, run[0].Text));
        return (claimed ? run[1].End : run[0].End) - at;
    }

    /// <summary>A quantity at a word, of up to three: 5in, 5 in, 5 1/2 in; a number alone is one whose unit is to be asked for.</summary>
    public (string Text, int Words, UnitWord? Unit)? QuantityAt(int at)
    {
        for (var count = Math.Min(MostWords, said.Length - at); count >= 1; count--)
        {
            var text = string.Join(' ', said[at..(at + count)]);
            if (!IsParted(at, at + count) && NumberText.Split(text) is { } split && UnitWord.Find(split.After) is { } unit)
            {
                return (text, count, unit);
            }
        }

        return at < said.Length && NumberText.Split(said[at]) is { After.Length: 0 } ? (said[at], 1, null) : null;
    }

    // Layers and thicknesses by turns, with no comma between.
    private List<(CommandOption? Layer, string Text, int End)> RunFrom(int at)
    {
        var run = new List<(CommandOption? Layer, string Text, int End)>();
        for (var next = at; next < said.Length;)
        {
            (CommandOption? Layer, string Text, int End)? part =
                SpokenTime.At(said, next, options.When.Reader) is not null ? null
                : QuantityAt(next) is { } quantity
                    ? quantity.Unit is { Dimension: Dimension.Temperature } ? null : (null, quantity.Text, next + quantity.Words)
                    : LayerOf(next) is { } layer ? (layer, said[next], next + 1) : null;
            if (part is not { } found || (run.Count > 0 && run[^1].Layer is null == found.Layer is null))
            {
                break;
            }

            run.Add(found);
            next = Past(found.End);
            if (IsParted(found.End - 1, next + 1))
            {
                break;
            }
        }

        return run;
    }

    private int Past(int at) => at < said.Length && !ends.Contains(at - 1) && Between.Contains(said[at].ToLowerInvariant()) ? at + 1 : at;

    private bool IsParted(int from, int to) => Enumerable.Range(from, Math.Max(0, to - from - 1)).Any(ends.Contains);

    private CommandOption<ExactLength>? LayerOf(int at) => said[at].ToLowerInvariant() switch
    {
        "clear" or "black" or "blue" => options.Clear,
        "white" or "milky" => options.White,
        "snow" when at + 1 < said.Length && said[at + 1].Equals("ice", StringComparison.OrdinalIgnoreCase) => options.White,
        "snow" => options.Snow,
        "slush" => options.Slush,
        _ => null,
    };
}
