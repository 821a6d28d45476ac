using CrewBot.Chat.Commands;
using CrewBot.Chat.Lines;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Boxes;

namespace CrewBot.Chat.Boxes;

/// <summary>Reads a thing for the ice by what it says of itself: "braid 6lb", "1/8oz tungsten jig", "shelter for 3".</summary>
public sealed class GearReader(TradeKnowledge knowledge) : OptionReader<Gear>
{
    private const int LongestName = 60;

    private readonly LineSpecReader _lines = new(knowledge, needsTest: true);
    private readonly LureReader _lures = new(knowledge);

    public override string Accepts =>
        "a line or leader with its test, a lure with its weight, a hook, auger, shelter, heater, sled or rescue kit, such as braid 6lb";

    public override Reading<Gear> Read(string text, CrewUnits units)
    {
        if (text.Length > LongestName)
        {
            return new Misread($"{text.Length} characters is too long for one thing: at most {LongestName}.");
        }

        var words = RecordSet.Plain(text).Split(' ');
        if (GearWords.KindNamedIn(words) is not { } kind)
        {
            return NamesLine(text) ? ReadLine(text, units, leader: false) : ReadLure(text, units);
        }

        return kind switch
        {
            BoxKind.Leader => ReadLine(Without(text, "leader"), units, leader: true),
            BoxKind.Hook => ReadHook(Without(text, "hook"), text),
            BoxKind.Auger => ReadAuger(text, units),
            BoxKind.Shelter => ReadShelter(text, words),
            _ => new Gear { Kind = kind, Name = text },
        };
    }

    public override IEnumerable<string> Suggest(string begun) =>
        _lines.Suggest(begun)
            .Concat(_lines.Suggest(begun).Select(line => $"{line} leader"))
            .Concat(GearWords.Examples.Where(example => example.StartsWith(begun, StringComparison.OrdinalIgnoreCase)));

    private bool NamesLine(string text) => knowledge.Lines.TryFind(string.Join(' ', SpokenParts.Of(text).Words), out _);

    private Reading<Gear> ReadLine(string text, CrewUnits units, bool leader)
    {
        var reading = _lines.Read(text, units);
        if (reading.Value is not { Test: { } test, Material: var material })
        {
            return new Misread(reading.Fault!);
        }

        var isLeader = leader || material.Use == LineUse.Bite;
        return new Gear
        {
            Kind = isLeader ? BoxKind.Leader : BoxKind.Line,
            Name = $"{material.Name} {Own(Showing.In(units).Test(test))}{(isLeader ? " leader" : "")}",
            Record = material.Key,
            Mass = TestMass.Of(test, units),
        };
    }

    private Reading<Gear> ReadLure(string text, CrewUnits units)
    {
        var reading = _lures.Read(text, units);
        if (reading.Value is not { } lure)
        {
            return SpokenParts.Of(text) is { Quantities.Count: > 0, Words.Count: > 0 }
                ? new Misread(reading.Fault!)
                : new Misread($"can't tell what {Quoting.Quote(text)} is. Give {Accepts}.");
        }

        var name = lure.IsPlainMetal ? $"{lure.Material.Name} {lure.Presentation.Name}" : lure.Presentation.Name;
        return new Gear
        {
            Kind = BoxKind.Lure,
            Name = $"{Own(Showing.In(units).Lure(lure.Weight))} {name}",
            Record = lure.Presentation.Key,
            Material = lure.Material.Key,
            Mass = ExactMass.Nearest(lure.Weight.ToUnit(units == CrewUnits.Customary ? UnitsNet.Units.MassUnit.Ounce : UnitsNet.Units.MassUnit.Gram)),
        };
    }

    private Reading<Gear> ReadHook(string size, string text) => knowledge.Hooks.TryFind(size, out var hook)
        ? new Gear { Kind = BoxKind.Hook, Name = $"hook {hook.Size}", Record = hook.Key }
        : new Misread($"{Quoting.Quote(text)} names no hook size. Give one such as hook 6 or hook 1/0.");

    private static Reading<Gear> ReadAuger(string text, CrewUnits units)
    {
        if (SpokenParts.Of(text).Quantities is not [(var quantity, _), ..])
        {
            return new Gear { Kind = BoxKind.Auger, Name = text };
        }

        var width = new ExactLengthReader(QuantityReaders.Hole).Read(quantity, units);
        return width.Fault is { } fault ? new Misread(fault) : new Gear { Kind = BoxKind.Auger, Name = text, Width = width.Value };
    }

    private static Reading<Gear> ReadShelter(string text, string[] words)
    {
        var numbers = words.Where(word => word.All(char.IsAsciiDigit)).ToList();
        return numbers switch
        {
            [] => new Gear { Kind = BoxKind.Shelter, Name = text },
            [var only] when int.TryParse(only, out var seats) && seats is > 0 and <= GearWords.MostSeats =>
                new Gear { Kind = BoxKind.Shelter, Name = text, Seats = seats },
            _ => new Misread($"can't tell how many {Quoting.Quote(text)} seats. Give 1 to {GearWords.MostSeats}, such as shelter for 3."),
        };
    }

    // A label is in one unit: the owner's.
    private static string Own(string pair) => pair[..pair.IndexOf(" (", StringComparison.Ordinal)];

    private static string Without(string text, string word) =>
        string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Where(said => !RecordSet.Plain(said).TrimEnd('s').Equals(word, StringComparison.Ordinal)));
}
