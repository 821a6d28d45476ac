using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;

namespace CrewBot.Chat.Rigs;

/// <summary>Reads a line, or "none" for a lure that falls free.</summary>
public sealed class LineOrNoneReader(LineSpecReader lines) : OptionReader<LineSpec?>
{
    public override string Accepts => $"{lines.Accepts}, or none";

    public override Reading<LineSpec?> Read(string text, CrewUnits units)
    {
        if (text.Equals("none", StringComparison.OrdinalIgnoreCase))
        {
            return (LineSpec?)null;
        }

        var reading = lines.Read(text, units);
        return reading.Fault is { } fault ? new Misread(fault) : reading.Value;
    }

    public override IEnumerable<string> Suggest(string begun) => [.. None(begun), .. lines.Suggest(begun)];

    public override IEnumerable<string> Suggest(string begun, Caller caller) => [.. None(begun), .. lines.Suggest(begun, caller)];

    private static IEnumerable<string> None(string begun) =>
        "none".StartsWith(begun, StringComparison.OrdinalIgnoreCase) ? ["none"] : [];
}
