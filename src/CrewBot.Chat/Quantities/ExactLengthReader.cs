using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads a length and fixes it to the nanometre in the unit it was written in.</summary>
public sealed class ExactLengthReader(QuantityReader<Length> reader) : OptionReader<ExactLength>
{
    public override string Accepts => reader.Accepts;

    public override Reading<ExactLength> Read(string text, CrewUnits units)
    {
        var reading = reader.Read(text, units);
        return reading.Fault is { } fault
            ? new Misread(fault)
            : ExactLength.Nearest(reading.Value.ToUnit(UnitOf(UnitText.Of(text, units, reader.Bare))));
    }

    // Feet and inches together count in inches.
    private static LengthUnit UnitOf(string word) => UnitWord.Find(word)?.Factor switch
    {
        1 => LengthUnit.Meter,
        0.01 => LengthUnit.Centimeter,
        0.001 => LengthUnit.Millimeter,
        12 * 0.0254 => LengthUnit.Foot,
        36 * 0.0254 => LengthUnit.Yard,
        72 * 0.0254 => LengthUnit.Fathom,
        _ => LengthUnit.Inch,
    };
}
