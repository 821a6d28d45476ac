using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>Reads the name of a thing of the trade: species, bait, knot, water.</summary>
/// <typeparam name="T">The kind of thing.</typeparam>
/// <param name="records">All there are.</param>
/// <param name="noun">What one is called, with its article: "a species".</param>
public sealed class RecordReader<T>(RecordSet<T> records, string noun) : OptionReader<T>
    where T : TradeRecord
{
    private const int Exampled = 2;
    private const int NearestShown = 3;
    private const int ShortestSlip = 5;

    public override string Accepts =>
        records.Count == 0 ? $"{noun}; none is set up yet" : $"{noun}, such as {string.Join(", ", records.Take(Exampled).Select(record => record.Name))}";

    public override Reading<T> Read(string text, CrewUnits units)
    {
        if (records.TryFind(text, out var record))
        {
            return record;
        }

        if (records.Count == 0)
        {
            return new Misread($"{Quoting.Quote(text)} is not known. Give {Accepts}.");
        }

        var nearest = Nearest.Near(text, records.Words.Select(pair => pair.Key))
            .Select(word => records.TryFind(word, out var near) ? near.Name : word)
            .Distinct()
            .Take(NearestShown)
            .ToList();
        return new Misread($"{Quoting.Quote(text)} is not known. {(nearest.Count > 0 ? $"Nearest: {string.Join(", ", nearest)}." : $"Give {Accepts}.{More}")}");
    }

    private string More => records.Count > Exampled ? $" All {records.Count} are offered as you type." : "";

    // Who has slipped on a key is offered what is one slip away, when nothing begins so.
    public override IEnumerable<string> Suggest(string begun)
    {
        var begins = Named(name => Nearest.Begins(begun, name))
            .OrderBy(name => !name.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            .ToList();
        return begins.Count > 0 || begun.Length < ShortestSlip ? begins : Named(name => Nearest.IsOneSlipOff(begun.ToLowerInvariant(), name.ToLowerInvariant()));
    }

    private IEnumerable<string> Named(Func<string, bool> fits) => records
        .Where(record => record.Aliases.Append(record.Name).Any(fits))
        .Select(record => record.Name);
}
