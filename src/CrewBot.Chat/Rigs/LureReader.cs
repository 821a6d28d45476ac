using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Rigs;

/// <summary>Reads a lure: "1/4oz rattle bait", "1/8 oz tungsten jig".</summary>
public sealed class LureReader(TradeKnowledge knowledge) : OptionReader<Lure>
{
    public override string Accepts => "weight and kind, and the metal if you know it, such as 1/8oz tungsten jig";

    public override Reading<Lure> Read(string text, CrewUnits units)
    {
        var parts = SpokenParts.Of(text);
        if (parts.Quantities is not [(var quantity, { Dimension: Dimension.Weight })])
        {
            return new Misread($"{Quoting.Quote(text)} has no single weight. Give {Accepts}.");
        }

        var weight = QuantityReaders.LureWeight.Read(quantity, units);
        if (weight.Fault is { } fault)
        {
            return new Misread(fault);
        }

        var words = parts.Words.ToList();
        if (words.Count == 0)
        {
            return new Misread($"{Quoting.Quote(text)} names no lure. Give {Accepts}.");
        }

        var material = Take(words, knowledge.LureMaterials);
        return Find(string.Join(' ', words)) is { } presentation
            ? new Lure(presentation, weight.Value, material ?? knowledge.LureMaterials[presentation.Materials[0]])
            : new Misread($"{Quoting.Quote(string.Join(' ', words))} is no lure I know. {Nearest.Offer(string.Join(' ', words), knowledge.Presentations.Select(known => known.Name), 3, $"Give {Accepts}.")}");
    }

    // A shop sells a sinker or a split shot, not a way of fishing.
    private Presentation? Find(string name) => knowledge.Presentations.TryFind(name, out var presentation)
        ? presentation
        : knowledge.Presentations.FirstOrDefault(known => known.Body.Equals(name, StringComparison.OrdinalIgnoreCase));

    public override bool CanSuggest => true;

    public override IEnumerable<string> Suggest(string begun, Caller caller) => OwnGear.Suggest(caller, begun, BoxKind.Lure);

    private static LureMaterial? Take(List<string> words, RecordSet<LureMaterial> materials)
    {
        for (var at = 0; at < words.Count; at++)
        {
            // "Tungsten jig" is also a name for a jig: the metal is taken only where something is left to name the lure.
            if (words.Count > 1 && materials.TryFind(words[at], out var material))
            {
                words.RemoveAt(at);
                return material;
            }
        }

        return null;
    }
}
