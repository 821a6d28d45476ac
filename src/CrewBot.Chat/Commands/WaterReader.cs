using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Commands;

/// <summary>Reads the name of a water: the crew's own first, then those of the knowledge file.</summary>
public sealed class WaterReader(RecordSet<WaterRules> known) : OptionReader<WaterRules>
{
    private const int NearestShown = 3;

    private readonly RecordReader<WaterRules> _known = new(known, "a water");

    public override string Accepts => "a water of the crew; its owner adds one with /crew setup water:\"name\"";

    public override string AcceptedFrom(Caller caller) =>
        caller.Waters.Count > 0 ? $"a water of the crew: {Listing.Of([.. caller.Waters.Select(water => water.Name)])}" : Accepts;

    public override bool CanSuggest => true;

    public override Reading<WaterRules> Read(string text, CrewUnits units) => _known.Read(text, units);

    public override Reading<WaterRules> Read(string text, Caller caller)
    {
        var plain = RecordSet.Plain(text);
        if (caller.Waters.FirstOrDefault(water => NamesOf(water).Any(name => RecordSet.Plain(name) == plain)) is { } own)
        {
            return own;
        }

        if (known.TryFind(text, out var laid))
        {
            return laid;
        }

        var names = caller.Waters.Concat(known).ToList();
        var offer = Nearest.Offer(text, names.SelectMany(NamesOf), NearestShown, names.Count > 0 ? $"It has {Listing.Of([.. names.Select(water => water.Name)])}." : "");
        return new Misread($"{Quoting.Quote(text)} is no water of this crew.{(offer.Length > 0 ? " " : "")}{offer} Its owner adds one with /crew setup water:\"name\".");
    }

    public override IEnumerable<string> Suggest(string begun) => _known.Suggest(begun);

    public override IEnumerable<string> Suggest(string begun, Caller caller) => caller.Waters
        .Where(water => NamesOf(water).Any(name => Nearest.Begins(begun, name)))
        .Select(water => water.Name)
        .Concat(Suggest(begun));

    private static IEnumerable<string> NamesOf(WaterRules water) => water.Aliases.Prepend(water.Name);
}
