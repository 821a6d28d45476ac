using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Fish;

namespace CrewBot.Chat.Ice;

/// <summary>Reads a walk-out, hole by hole: "4 5 5 3in". One unit at the end, or one after each.</summary>
internal sealed class HolesReader : OptionReader<IReadOnlyList<ExactLength>>
{
    private const int Most = 40;

    private static readonly ExactLengthReader One = new(IceReaders.Thickness);

    public override string Accepts => "thicknesses in order with their unit, such as 4 5 5 3in";

    public override Reading<IReadOnlyList<ExactLength>> Read(string text, CrewUnits units)
    {
        var words = Joined(text.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries));
        if (words.Count is 0 or > Most)
        {
            return new Misread($"{words.Count} holes: give 1 to {Most}, {Accepts}.");
        }

        if (NumberText.Split(words[^1])?.After is not { Length: > 0 } unit)
        {
            return new Misread($"{Quoting.Quote(text)} has no unit. Give {Accepts}.");
        }

        var holes = new List<ExactLength>(words.Count);
        foreach (var word in words)
        {
            var reading = One.Read(NumberText.Split(word) is { After.Length: 0 } ? word + unit : word, units);
            if (reading.Fault is { } fault)
            {
                return new Misread(fault);
            }

            holes.Add(reading.Value);
        }

        return holes;
    }

    // "3 in" is one hole.
    private static List<string> Joined(string[] words)
    {
        var joined = new List<string>();
        foreach (var word in words)
        {
            if (joined.Count > 0 && !word.Any(char.IsDigit) && UnitWord.Find(word) is not null)
            {
                joined[^1] += word;
            }
            else
            {
                joined.Add(word);
            }
        }

        return joined;
    }
}
