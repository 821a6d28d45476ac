using System.Globalization;

namespace CrewBot.Chat.Commands;

/// <summary>Reads a whole number between two limits, both included.</summary>
/// <param name="least">The least.</param>
/// <param name="most">The most.</param>
/// <param name="accepts">What it numbers, with an example: "a number of /catch list, such as 12"; null to name the limits.</param>
public sealed class WholeNumberReader(int least, int most, string? accepts = null) : OptionReader<int>
{
    public int Least => least;

    public int Most => most;

    // The most that fits is no limit that anybody would want to read.
    public override string Accepts => accepts ?? (most == int.MaxValue ? $"a whole number from {least} up" : $"a whole number from {least} to {most}");

    // Replies write an entry as "#3", and so do people.
    public override Reading<int> Read(string text, CrewUnits units) =>
        !int.TryParse(text.TrimStart('#'), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.")
            : number >= least && number <= most ? number
            : new Misread($"{Quoting.Quote(text)} is not {Accepts}.");
}
