using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Weather;

namespace CrewBot.Chat.Weather;

/// <summary>Says when it is light. Near the poles a day may have neither rise nor set, or one of the two.</summary>
internal static class LightWords
{
    /// <summary>The sun of a day: "sun 08:24 to 16:30".</summary>
    public static string Sun(SunPath sun) => sun switch
    {
        { Up: { } up, Down: { } down } => $"sun {Clock(up)} to {Clock(down)}",
        { Up: { } up } => $"sunrise {Clock(up)}, no sunset",
        { Down: { } down } => $"sunset {Clock(down)}, no sunrise",
        { AboveAtNoon: true } => "the sun does not set",
        _ => "the sun does not rise",
    };

    /// <summary>The twilight around it, which is there on days without a sunrise too.</summary>
    public static string Twilight(Daylight light) => light.Twilight switch
    {
        { Up: { } up, Down: { } down } => $"Civil dawn {Clock(up)}, civil dusk {Clock(down)}",
        { Up: { } up } => $"Civil dawn {Clock(up)}, and it does not get dark after",
        { Down: { } down } => $"Civil dusk {Clock(down)}, and no dark before",
        { AboveAtNoon: true } => "It never gets darker than civil twilight",
        _ => "It is darker than civil twilight all day",
    };

    /// <summary>What is left of the sun; null on a day without a sunset.</summary>
    public static string? Left(SunPath sun, DateTimeOffset now) => sun.Down is not { } down ? null
        : now < down ? $"{Span(down - now)} until sunset."
        : $"The sun set {Span(now - down)} ago.";

    public static string Clock(DateTimeOffset at) => Nearest(at).ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Every time that the day has.</summary>
    public static IEnumerable<Figure> Figures(Daylight light)
    {
        (FigureKey<TimeSpan> Key, DateTimeOffset? At)[] times =
        [
            (WeatherFigures.Dawn, light.Twilight.Up), (WeatherFigures.Sunrise, light.Sun.Up), (WeatherFigures.Noon, light.Noon),
            (WeatherFigures.Sunset, light.Sun.Down), (WeatherFigures.Dusk, light.Twilight.Down),
        ];

        // By the day of noon: a dusk may fall after midnight.
        return times.Where(time => time.At is not null).Select(time => time.Key.Of(time.At!.Value.DateTime - light.Noon.Date));
    }

    private static string Span(TimeSpan span) => span.TotalMinutes < 90
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalMinutes):0} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(span.TotalHours):0} h {span.Minutes} min");

    // As almanacs print it.
    private static DateTimeOffset Nearest(DateTimeOffset at) => at.AddSeconds(30);
}
