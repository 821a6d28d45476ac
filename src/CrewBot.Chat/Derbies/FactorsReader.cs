using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>Reads points per unit of length by species: "walleye 1, perch 2, pike 0.75".</summary>
public sealed class FactorsReader(RecordSet<Species> species) : OptionReader<IReadOnlyDictionary<string, decimal>>
{
    private const decimal Most = 100;

    private readonly RecordReader<Species> _species = new(species, "a species");

    public override string Accepts => "species and points, such as walleye 1, perch 2, pike 0.75";

    public override Reading<IReadOnlyDictionary<string, decimal>> Read(string text, CrewUnits units)
    {
        var factors = new Dictionary<string, decimal>();
        foreach (var part in text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parting = part.LastIndexOf(' ');
            if (parting < 0
                || !decimal.TryParse(part[(parting + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var factor)
                || factor is <= 0 or > Most)
            {
                return new Misread($"can't read {Quoting.Quote(part)}. Give {Accepts}.");
            }

            var fish = _species.Read(part[..parting].Trim(), units);
            if (fish.Fault is { } fault)
            {
                return new Misread(fault);
            }

            if (!factors.TryAdd(fish.Value!.Key, factor))
            {
                return new Misread($"{fish.Value.Name} is given twice: keep one.");
            }
        }

        return factors.Count > 0 ? factors : new Misread($"{Quoting.Quote(text)} names nothing. Give {Accepts}.");
    }
}
