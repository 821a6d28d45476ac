using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>Reads a shelter's sides: "6x6x6.5ft". One unit at the end, or one after each.</summary>
public sealed class RoomSizeReader : OptionReader<RoomSize>
{
    public override string Accepts => "length x width x height, such as 6x6x6.5ft or 1.8x1.8x2m";

    public override Reading<RoomSize> Read(string text, CrewUnits units)
    {
        var sides = text.ToLowerInvariant().Split(['x', '×', '*'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (sides.Length != 3)
        {
            return new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
        }

        var unit = NumberText.Split(sides[^1]) is { After: var after } && UnitWord.Find(after) is not null ? after : "";
        var lengths = new List<Length>(sides.Length);
        foreach (var side in sides)
        {
            var reading = WeatherReaders.Side.Read(NumberText.Split(side) is { After: "" } ? side + unit : side, units);
            if (reading.Fault is { } fault)
            {
                return new Misread(fault);
            }

            lengths.Add(reading.Value);
        }

        return new RoomSize(lengths[0], lengths[1], lengths[2]);
    }
}
