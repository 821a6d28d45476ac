using System.Globalization;

namespace CrewBot.Chat.Commands;

/// <summary>Reads a whole number between two limits, both included.</summary>
public sealed class WholeNumberReader(int least, int most) : OptionReader<int>
{
    public int Least => least;

    public int Most => most;

    // The most that fits is no limit that anybody would want to read.
    public override string Accepts => most == int.MaxValue ? $"a whole number from {least} up" : $"a whole number from {least} to {most}";

    public override Reading<int> Read(string text, CrewUnits units) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most
            ? number
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
}
