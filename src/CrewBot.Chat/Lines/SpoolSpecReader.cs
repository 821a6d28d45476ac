using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Lines;

/// <summary>Reads a spool's capacity: "120m 0.22mm".</summary>
public sealed class SpoolSpecReader : OptionReader<SpoolSpec>
{
    public override string Accepts => "length and diameter as on the reel, such as 120m 0.22mm";

    public override Reading<SpoolSpec> Read(string text, CrewUnits units)
    {
        if (SpokenParts.Of(text) is not { Words.Count: 0, Quantities: [(var first, { Dimension: Dimension.Length } firstUnit), (var second, { Dimension: Dimension.Length })] })
        {
            return new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
        }

        var firstIsDiameter = NumberText.Split(first) is { } split && firstUnit.ToBase(split.Number) < 0.01;
        var length = QuantityReaders.LineLength.Read(firstIsDiameter ? second : first, units);
        var diameter = QuantityReaders.Diameter.Read(firstIsDiameter ? first : second, units);
        return (length.Fault ?? diameter.Fault) is { } fault
            ? new Misread(fault)
            : new SpoolSpec(length.Value, diameter.Value);
    }
}
