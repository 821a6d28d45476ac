using System.Globalization;
using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Crews;

/// <summary>Reads latitude and longitude in degrees: "49.88, -95.12".</summary>
public sealed class CoordinatesReader : OptionReader<(decimal Latitude, decimal Longitude)>
{
    private const NumberStyles Degrees = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    public override string Accepts => "latitude and longitude in degrees, such as 49.88, -95.12";

    public override Reading<(decimal Latitude, decimal Longitude)> Read(string text, CrewUnits units)
    {
        var parts = text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries);
        return parts is [var north, var east]
            && decimal.TryParse(north, Degrees, CultureInfo.InvariantCulture, out var latitude) && latitude is >= -90 and <= 90
            && decimal.TryParse(east, Degrees, CultureInfo.InvariantCulture, out var longitude) && longitude is >= -180 and <= 180
            ? (latitude, longitude)
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");
    }
}
