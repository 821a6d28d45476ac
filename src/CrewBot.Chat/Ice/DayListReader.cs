using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Ice;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Reads days on end, each by its maximum and minimum: "20/5 18/2 25/-3F". One unit at the end, or one after each.</summary>
internal sealed class DayListReader : OptionReader<DayList>
{
    public override string Accepts => "each day's max/min, oldest first, such as 20/5 18/2 25/-3F";

    public override Reading<DayList> Read(string text, CrewUnits units)
    {
        var words = text.Replace(" /", "/", StringComparison.Ordinal).Replace("/ ", "/", StringComparison.Ordinal)
            .Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 0 or > GrowingWeather.MostDays)
        {
            return new Misread($"{words.Length} days: give 1 to {GrowingWeather.MostDays}, {Accepts}.");
        }

        var (days, lacksUnits, last) = (new List<DayTemperatures>(words.Length), false, UnitOf(words[^1]));
        foreach (var word in words)
        {
            if (word.Split('/') is not [var most, var least])
            {
                return new Misread($"{Quoting.Quote(word)} is no max/min. Give {Accepts}.");
            }

            var unit = UnitOf(least) is { Length: > 0 } own ? own : last;
            lacksUnits |= unit.Length == 0;
            var reading = Day(most, least, unit, units);
            if (reading.Fault is { } fault)
            {
                return new Misread(fault);
            }

            days.Add(reading.Value);
        }

        return new DayList(days, lacksUnits);
    }

    /// <summary>One day of two numbers.</summary>
    /// <param name="most">The maximum as written.</param>
    /// <param name="least">The minimum as written.</param>
    /// <param name="unit">The unit of a number that has none; empty for the caller's.</param>
    /// <param name="units">What the caller speaks in.</param>
    public static Reading<DayTemperatures> Day(string most, string least, string unit, CrewUnits units)
    {
        var (warmest, coldest) = (One(most, unit, units), One(least, unit, units));
        return (warmest.Fault ?? coldest.Fault) is { } fault ? new Misread(fault)
            : coldest.Value.DegreesCelsius > warmest.Value.DegreesCelsius ? new Misread($"{Quoting.Quote($"{most}/{least}")} has its min above its max: give max/min, such as 20/5F.")
            : new DayTemperatures(warmest.Value, coldest.Value);
    }

    private static Reading<Temperature> One(string text, string unit, CrewUnits units) =>
        QuantityReaders.Air.Read(UnitOf(text).Length == 0 ? text + unit : text, units);

    private static string UnitOf(string word) => NumberText.Split(word[(word.LastIndexOf('/') + 1)..])?.After ?? "";
}
