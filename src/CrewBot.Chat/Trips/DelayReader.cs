using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Trips;

/// <summary>Reads "+1h", "30 min", "1.5 h": from 5 minutes to 24 hours.</summary>
public sealed partial class DelayReader : OptionReader<TimeSpan>
{
    private static readonly TimeSpan Least = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Most = TimeSpan.FromHours(24);

    public override string Accepts => "how much later, from 5 min to 24 h, such as +1h or 30 min";

    public override Reading<TimeSpan> Read(string text, CrewUnits units)
    {
        var match = DelayText().Match(text.ToLowerInvariant());
        if (!match.Success)
        {
            return new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
        }

        var number = double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
        var delay = match.Groups["unit"].Value[0] == 'h' ? TimeSpan.FromHours(number) : TimeSpan.FromMinutes(number);
        return delay >= Least && delay <= Most ? delay : new Misread($"{Quoting.Quote(text)} is out of range. Give {Accepts}.");
    }

    [GeneratedRegex(@"^\+? ?(?<number>[0-9]{1,4}(?:\.[0-9]{1,2})?) ?(?<unit>min|mins|minutes?|h|hours?)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex DelayText();
}
