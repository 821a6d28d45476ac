using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads a mass and fixes it to the nanogram in the unit it was written in.</summary>
public sealed class ExactMassReader(QuantityReader<Mass> reader) : OptionReader<ExactMass>
{
    public override string Accepts => reader.Accepts;

    public override Reading<ExactMass> Read(string text, CrewUnits units)
    {
        var reading = reader.Read(text, units);
        return reading.Fault is { } fault
            ? new Misread(fault)
            : ExactMass.Nearest(reading.Value.ToUnit(UnitOf(UnitText.Of(text, units, reader.Bare))));
    }

    private static MassUnit UnitOf(string word) => UnitWord.Find(word)?.Factor switch
    {
        1 => MassUnit.Kilogram,
        0.001 => MassUnit.Gram,
        0.45359237 => MassUnit.Pound,
        _ => MassUnit.Ounce,
    };
}
