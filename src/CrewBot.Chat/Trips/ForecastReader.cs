using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Trips;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Chat.Trips;

/// <summary>Reads one point of a forecast: "07:00 -20C 15mph".</summary>
public sealed class ForecastReader : OptionReader<ForecastPoint>
{
    private static readonly (string Text, SpeedUnit Unit)[] Winds =
    [
        ("mph", SpeedUnit.MilePerHour), ("km/h", SpeedUnit.KilometerPerHour), ("kmh", SpeedUnit.KilometerPerHour),
        ("kn", SpeedUnit.Knot), ("kt", SpeedUnit.Knot), ("m/s", SpeedUnit.MeterPerSecond),
    ];

    private static readonly Speed Strongest = Speed.FromMetersPerSecond(60);

    public override string Accepts => "time, air and wind, such as 07:00 -20C 15km/h, 13:00 10F 12mph";

    public override Reading<ForecastPoint> Read(string text, CrewUnits units) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var clock, var air, var wind]
        && TimeOnly.TryParseExact(clock, ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
        && QuantityReaders.Air.Read(air, units) is { Fault: null } degrees
        && WindOf(wind) is { } speed
            ? new ForecastPoint(time, degrees.Value, speed)
            : new Misread($"can't read {Quoting.Quote(text)}. Give {Accepts}.");

    private static Speed? WindOf(string text)
    {
        var (written, unit) = Winds.FirstOrDefault(wind => text.EndsWith(wind.Text, StringComparison.OrdinalIgnoreCase));
        return written is not null
            && double.TryParse(text.AsSpan(0, text.Length - written.Length), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && Speed.From(number, unit) is var speed && speed <= Strongest
            ? speed
            : null;
    }
}
