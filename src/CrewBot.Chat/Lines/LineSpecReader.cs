using CrewBot.Chat.Boxes;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;
using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>Reads a line: "braid 6lb", "0.18 mm nylon", or for a leader "8 lb fluorocarbon 24in".</summary>
/// <param name="knowledge">The materials and their tables.</param>
/// <param name="needsTest">Whether the test has to be known.</param>
public sealed class LineSpecReader(TradeKnowledge knowledge, bool needsTest) : OptionReader<LineSpec>
{
    private const string Leader = " leader";

    private static readonly Length ThickestLine = Length.FromMillimeters(1);

    public override string Accepts => "material and test or diameter, such as braid 6lb or nylon 0.18mm";

    private IEnumerable<string> Names => knowledge.Lines.Select(line => line.Name);

    public override Reading<LineSpec> Read(string text, CrewUnits units)
    {
        var parts = SpokenParts.Of(text);
        if (parts.Words.FirstOrDefault(word => NumberText.Split(word) is { After: "" }) is { } bare)
        {
            return new Misread($"{Quoting.Quote(bare)} has no unit. Give {Accepts}.");
        }

        if (!knowledge.Lines.TryFind(string.Join(' ', parts.Words), out var material))
        {
            return new Misread(parts.Words.Count == 0
                ? $"{Quoting.Quote(text)} names no material. Give {Accepts}."
                : $"{Quoting.Quote(string.Join(' ', parts.Words))} is no line I know. {Nearest.Offer(string.Join(' ', parts.Words), Names, 3, $"There is {string.Join(", ", Names)}.")}");
        }

        Force? test = null;
        Length? diameter = null;
        Length? length = null;
        foreach (var (quantity, unit) in parts.Quantities)
        {
            var fault = unit.Dimension switch
            {
                Dimension.Weight => Take(QuantityReaders.Test, quantity, units, ref test),
                Dimension.Length when IsThin(quantity, unit) => Take(QuantityReaders.Diameter, quantity, units, ref diameter),
                Dimension.Length => Take(QuantityReaders.Gap, quantity, units, ref length),
                _ => $"{Quoting.Quote(quantity)} does not belong to a line. Give {Accepts}.",
            };
            if (fault is not null)
            {
                return new Misread(fault);
            }
        }

        return Complete(text, material, test, diameter, length, Showing.In(units));
    }

    public override IEnumerable<string> Suggest(string begun) => knowledge.Lines
        .Where(line => line.Name.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
        .SelectMany(line => line.Sizes.Select(size => $"{line.Name} {size.Test.PoundsForce:0.#}lb"));

    // What they have on reels and as leaders comes before what there is.
    public override IEnumerable<string> Suggest(string begun, Caller caller) => OwnGear.Suggest(caller, begun, BoxKind.Line, BoxKind.Leader)
        .Select(name => name.EndsWith(Leader, StringComparison.Ordinal) ? name[..^Leader.Length] : name)
        .Concat(Suggest(begun));

    private Reading<LineSpec> Complete(
        string text, LineMaterial material, Force? test, Length? diameter, Length? length, Showing show)
    {
        var table = material.Table;
        if (test is null && diameter is null)
        {
            return new Misread($"{Quoting.Quote(text)} has neither test nor diameter. Give {Accepts}.");
        }

        if (test is { } labelled)
        {
            return table.Covers(labelled)
                ? new LineSpec(material, diameter ?? table.DiameterAt(labelled), labelled, length)
                : new Misread(
                    $"{material.Name} is known from {show.Test(table.Sizes[0].Test)} to {show.Test(table.Sizes[^1].Test)}, not at {show.Test(labelled)}.");
        }

        var covered = table.Covers(diameter!.Value);
        return covered || !needsTest
            ? new LineSpec(material, diameter.Value, covered ? table.TestAt(diameter.Value) : null, length)
            : new Misread(
                $"{material.Name} is known from {Showing.Fine(table.Sizes[0].Diameter)} to {Showing.Fine(table.Sizes[^1].Diameter)}; give its test too.");
    }

    private static bool IsThin(string quantity, UnitWord unit) =>
        NumberText.Split(quantity) is { } split && unit.ToBase(split.Number) <= ThickestLine.Meters;

    private static string? Take<T>(OptionReader<T> reader, string quantity, CrewUnits units, ref T? taken)
        where T : struct
    {
        if (taken is not null)
        {
            return $"{Quoting.Quote(quantity)} is one too many.";
        }

        var reading = reader.Read(quantity, units);
        taken = reading.Value;
        return reading.Fault;
    }
}
