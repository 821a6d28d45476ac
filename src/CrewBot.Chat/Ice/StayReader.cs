using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Reads how long something stands: "1h", "90 min".</summary>
internal sealed partial class StayReader : OptionReader<Duration>
{
    public override string Accepts => "how long, such as 1h or 90 min";

    public override Reading<Duration> Read(string text, CrewUnits units)
    {
        var match = StayText().Match(text.ToLowerInvariant());
        if (!match.Success)
        {
            return new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
        }

        var number = double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
        return match.Groups["unit"].Value[0] == 'm' ? Duration.FromMinutes(number) : Duration.FromHours(number);
    }

    [GeneratedRegex(@"^(?<number>[0-9]{1,3}(?:\.[0-9]{1,2})?) ?(?<unit>min|mins|minutes?|h|hours?)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex StayText();
}
