using System.Globalization;
using System.Text.RegularExpressions;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Crews;

/// <summary>Reads latitude and longitude in degrees, signed or with their letters: "49.88, -95.12", "49.88 N 95.12 W".</summary>
public sealed partial class CoordinatesReader : OptionReader<(decimal Latitude, decimal Longitude)>
{
    public override string Accepts => "latitude and longitude in degrees, such as 49.88, -95.12";

    public override Reading<(decimal Latitude, decimal Longitude)> Read(string text, CrewUnits units) =>
        Pair().Match(text) is { Success: true } match
            && Degrees(match.Groups["north"].Value, match.Groups["pole"].Value) is var latitude and >= -90 and <= 90
            && Degrees(match.Groups["east"].Value, match.Groups["side"].Value) is var longitude and >= -180 and <= 180
            ? (latitude, longitude)
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");

    private static decimal Degrees(string number, string letter)
    {
        var degrees = decimal.Parse(number, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        return letter is "S" or "s" or "W" or "w" ? -degrees : degrees;
    }

    // A letter stands in place of a sign, never beside one.
    [GeneratedRegex(
        """^\s*(?:(?<north>[-+]?[0-9]{1,3}(?:\.[0-9]{1,12})?)\s*°?|(?<north>[0-9]{1,3}(?:\.[0-9]{1,12})?)\s*°?\s*(?<pole>[NSns]))(?:\s*,\s*|\s+)(?:(?<east>[-+]?[0-9]{1,3}(?:\.[0-9]{1,12})?)\s*°?|(?<east>[0-9]{1,3}(?:\.[0-9]{1,12})?)\s*°?\s*(?<side>[EWew]))\s*$""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Pair();
}
