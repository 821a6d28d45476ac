using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Quantities;

/// <summary>Reads a quantity in any unit that fits it; a bare number takes the caller's unit.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="accepts">What is accepted, with an example.</param>
public sealed class QuantityReader<T>(string accepts) : OptionReader<T>
{
    /// <summary>What is read, with its article: "a depth".</summary>
    public required string Noun { get; init; }

    public required Dimension Dimension { get; init; }

    /// <summary>Makes the quantity of a number of base units.</summary>
    public required Func<double, T> Of { get; init; }

    /// <summary>Least and most, in base units, both included.</summary>
    public required (double Least, double Most) Range { get; init; }

    /// <summary>Writes a limit for a refusal.</summary>
    public required Func<T, Showing, string> Write { get; init; }

    /// <summary>The unit of a bare number, customary and metric; null where a unit must be given.</summary>
    public (string Customary, string Metric)? Bare { get; init; }

    public override string Accepts => accepts;

    /// <summary>The unit that a bare number takes from a caller; empty where a unit must be given.</summary>
    public string BareUnit(CrewUnits units) => Bare is { } bare ? units == CrewUnits.Customary ? bare.Customary : bare.Metric : "";

    public override Reading<T> Read(string text, CrewUnits units)
    {
        var written = Dimension == Dimension.Temperature ? BelowZero.Signed(text) ?? text : text;
        if (NumberText.Split(written) is not { } split)
        {
            return Unreadable(text);
        }

        if (split.IsAmbiguous)
        {
            var plain = text.Split(',');
            return new Misread(
                $"{Quoting.Quote(text)} could mean {plain[0]}.{plain[1]} or {plain[0]}{plain[1]}: write the one you mean.");
        }

        if (split.After.Length == 0)
        {
            return Bare is not null
                ? InRange(Unit(BareUnit(units)).ToBase(split.Number), text, units)
                : new Misread($"{Quoting.Quote(text)} has no unit. Give {Accepts}.");
        }

        if (UnitWord.Find(split.After) is { } unit)
        {
            return unit.Dimension == Dimension
                ? InRange(unit.ToBase(split.Number), text, units)
                : new Misread($"{Quoting.Quote(text)} is {NameOf(unit.Dimension)}, not {Noun}. Give {Accepts}.");
        }

        return TwoUnits.For(Dimension)?.Read(text) is { } number
            ? InRange(number, text, units)
            : Unreadable(text);
    }

    private static UnitWord Unit(string word) => UnitWord.Find(word)!;

    private Reading<T> InRange(double number, string text, CrewUnits units)
    {
        if (number >= Range.Least && number <= Range.Most)
        {
            return Of(number);
        }

        var show = Showing.In(units);
        return new Misread(
            $"{Quoting.Quote(text)} is outside {Write(Of(Range.Least), show)} to {Write(Of(Range.Most), show)}. Give {Accepts}.");
    }

    private Reading<T> Unreadable(string text) => new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");

    private static string NameOf(Dimension dimension) => dimension switch
    {
        Dimension.Length => "a length",
        Dimension.Weight => "a weight",
        Dimension.Temperature => "a temperature",
        Dimension.Speed => "a speed",
        Dimension.Time => "a time",
        Dimension.Density => "a density",
        Dimension.Power => "a power",
        _ => throw new InvalidOperationException($"No name for {dimension}."),
    };
}
