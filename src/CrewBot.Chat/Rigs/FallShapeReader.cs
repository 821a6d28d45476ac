using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Rigs;

/// <summary>Reads a shape: ball, or the name of a presentation.</summary>
public sealed class FallShapeReader(RecordSet<Presentation> presentations) : OptionReader<FallShape>
{
    private readonly RecordReader<Presentation> _presentations = new(presentations, "a shape");

    public override string Accepts => "ball, or a kind of lure such as jig or spoon";

    public override Reading<FallShape> Read(string text, CrewUnits units)
    {
        if (text.Equals("ball", StringComparison.OrdinalIgnoreCase) || text.Equals("sphere", StringComparison.OrdinalIgnoreCase))
        {
            return FallShape.Ball;
        }

        var reading = _presentations.Read(text, units);
        return reading.Fault is { } fault ? new Misread(fault) : new FallShape(reading.Value!.Name, reading.Value.Fall);
    }

    public override IEnumerable<string> Suggest(string begun) =>
        ("ball".StartsWith(begun, StringComparison.OrdinalIgnoreCase) ? Enumerable.Repeat("ball", 1) : []).Concat(_presentations.Suggest(begun));
}
