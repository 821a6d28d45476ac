namespace CrewBot.Chat.Commands;

/// <summary>Reads several things parted by commas, "and" or semicolons.</summary>
/// <typeparam name="T">One of the things.</typeparam>
/// <param name="one">Reads one.</param>
/// <param name="most">How many there may be.</param>
public sealed class ListReader<T>(OptionReader<T> one, int most) : OptionReader<IReadOnlyList<T>>
{
    public override string Accepts => $"{one.Accepts}; several parted by commas";

    public override Reading<IReadOnlyList<T>> Read(string text, CrewUnits units)
    {
        var parts = text.Replace(" and ", ",", StringComparison.OrdinalIgnoreCase)
            .Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length > most)
        {
            return new Misread($"{parts.Length} are too many: at most {most}.");
        }

        var things = new List<T>(parts.Length);
        foreach (var part in parts)
        {
            var reading = one.Read(part, units);
            if (reading.Fault is { } fault)
            {
                return new Misread(fault);
            }

            things.Add(reading.Value!);
        }

        return things.Count > 0 ? things : new Misread($"{Quoting.Quote(text)} names nothing. Give {Accepts}.");
    }

    public override IEnumerable<string> Suggest(string begun)
    {
        var last = begun.LastIndexOf(',') + 1;
        return one.Suggest(begun[last..].TrimStart()).Select(next => last > 0 ? $"{begun[..last]} {next}" : next);
    }
}
