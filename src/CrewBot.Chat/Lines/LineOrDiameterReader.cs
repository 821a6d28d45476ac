using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>Reads how thick a line is, from a diameter or from a line with its test.</summary>
public sealed class LineOrDiameterReader(LineSpecReader lines) : OptionReader<Length>
{
    public override string Accepts => "a diameter or a line, such as 0.18mm or braid 10lb";

    public override Reading<Length> Read(string text, CrewUnits units)
    {
        if (SpokenParts.Of(text).Words.Count == 0 || NumberText.Split(text) is { After: "" })
        {
            return QuantityReaders.Diameter.Read(text, units);
        }

        var reading = lines.Read(text, units);
        return reading.Fault is { } fault ? new Misread(fault) : reading.Value!.Diameter;
    }

    public override IEnumerable<string> Suggest(string begun) => lines.Suggest(begun);
}
