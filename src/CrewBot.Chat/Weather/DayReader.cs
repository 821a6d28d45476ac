using CrewBot.Chat.Commands;
using CrewBot.Chat.Trips;

namespace CrewBot.Chat.Weather;

/// <summary>Reads "today", "tomorrow", "saturday", "2027-01-16". Noon stands for the day.</summary>
public sealed class DayReader : OptionReader<DayTime>
{
    private const int FirstYear = 1900;
    private const int LastYear = 2100;

    private static readonly DayTimeReader Whole = new();

    public override string Accepts => $"a day from {FirstYear} to {LastYear}, such as tomorrow, saturday or 2027-01-16";

    public override Reading<DayTime> Read(string text, CrewUnits units) =>
        Whole.Read($"{text} 12:00", units) is { Fault: null, Value: var day } && day!.Date is not { Year: < FirstYear or > LastYear }
            ? day
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
}
