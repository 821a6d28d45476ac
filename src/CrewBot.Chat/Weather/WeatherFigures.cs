using CrewBot.Chat.Commands;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>The numbers that weather replies hold.</summary>
public static class WeatherFigures
{
    public static readonly FigureKey<Temperature> AmericanChill = new("chill.american", "°F", "wind chill, US form, not rounded", x => x.DegreesFahrenheit);
    public static readonly FigureKey<Temperature> CanadianChill = new("chill.canadian", "°C", "wind chill, Canadian form, not rounded", x => x.DegreesCelsius);
    public static readonly FigureKey<Duration> Frostbite = new("chill.frostbite", "min", "soonest that bare skin freezes; not there where the risk is low", x => x.Minutes);
    public static readonly FigureKey<TimeSpan> Dawn = new("light.dawn", "h", "civil dawn, hours after midnight by the clock that is named", x => x.TotalHours);
    public static readonly FigureKey<TimeSpan> Sunrise = new("light.sunrise", "h", "sunrise, the same way", x => x.TotalHours);
    public static readonly FigureKey<TimeSpan> Noon = new("light.noon", "h", "when the sun stands highest, the same way", x => x.TotalHours);
    public static readonly FigureKey<TimeSpan> Sunset = new("light.sunset", "h", "sunset, the same way", x => x.TotalHours);
    public static readonly FigureKey<TimeSpan> Dusk = new("light.dusk", "h", "civil dusk, the same way", x => x.TotalHours);
    public static readonly FigureKey<Power> HeatLow = new("heat.low", "W", "heat that a shelter loses in little wind", x => (double)x.Watts);
    public static readonly FigureKey<Power> HeatHigh = new("heat.high", "W", "heat that a shelter loses in wind", x => (double)x.Watts);
    public static readonly FigureKey<MassFlow> Propane = new("heat.propane", "kg/h", "propane that is burned, the most of a range", x => x.KilogramsPerHour);
    public static readonly FigureKey<Duration> Bottle = new("heat.bottle", "h", "how long the bottle lasts, the least of a range", x => x.Hours);
    public static readonly FigureKey<Duration> Sealed = new("heat.sealed", "min", "burning until a sealed shelter of that size is down to 18 % oxygen", x => x.Minutes);

    /// <summary>Every key, in the order of the docs.</summary>
    public static IReadOnlyList<FigureKey> All { get; } =
        [AmericanChill, CanadianChill, Frostbite, Dawn, Sunrise, Noon, Sunset, Dusk, HeatLow, HeatHigh, Propane, Bottle, Sealed];
}
