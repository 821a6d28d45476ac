using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;

namespace CrewBot.Chat.Trips;

/// <summary>Reads how much later somebody is back, "+1h", "an hour", or by what time, "18:00".</summary>
public sealed class LaterReader : OptionReader<Later>
{
    private static readonly TimeSpan Least = TimeSpan.FromMinutes(5);
    private static readonly DayTimeReader Times = new();

    public override string Accepts => "how much later, from 5 min to 24 h, such as +1h or 30 min, or the time, such as 18:00";

    public override Reading<Later> Read(string text, CrewUnits units)
    {
        var said = text.ToLowerInvariant().TrimStart('+', ' ');
        if (SpanText.Read(said) is { } delay)
        {
            return delay >= Least && delay <= TripRules.LongestDelay ? new Later(delay, null) : new Misread($"{Quoting.Quote(text)} is out of range. Give {Accepts}.");
        }

        // "5" may be minutes, hours or five o'clock.
        return !said.All(char.IsAsciiDigit) && Times.Read(said, units) is { Fault: null, Value: { } until }
            ? new Later(null, until)
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
    }
}
