using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>Answers <c>/weather chill</c>: wind chill by both national forms, and how soon bare skin freezes.</summary>
public sealed class ShowChill : ICommandHandler
{
    private const double CalmMph = 3;

    private static readonly CommandOption<Temperature> Air = CommandOption.Required("air", "How cold the air is", WeatherReaders.Air);
    private static readonly CommandOption<Speed> Wind = CommandOption.Required("wind", "The steady wind, not its gusts", WeatherReaders.Wind);

    public CommandInfo Info { get; } = new(
        "weather chill", "Wind chill, and how soon bare skin freezes", "/weather chill air:-4F wind:15mph", [Air, Wind])
    {
        NeedsNoCrew = true,
        AlsoSaid = ["how cold", "wind chill", "windchill"],
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => Task.FromResult(Answer(request));

    private static Reply Answer(Request request)
    {
        var (air, wind) = (request.Get(Air), request.Get(Wind));
        var (american, canadian, frostbite) = (WindChill.American(air, wind), WindChill.Canadian(air, wind), Frostbite.Of(air, wind));
        var us = $"US form (National Weather Service, 2001): {Whole(american.DegreesFahrenheit)} °F{(wind.MilesPerHour < CalmMph ? ", the air itself: it is for winds from 3 mph" : "")}.";
        var canada = $"Canadian form (Environment Canada, 2001): {Whole(canadian.DegreesCelsius)}, as if it were °C.";
        return new Reply
        {
            Headline = $"{request.Show.Degrees(air)} and {request.Show.Wind(wind)} of wind: {Risk(frostbite)}",
            Lines =
            [
                .. request.Units == CrewUnits.Metric ? (string[])[canada, us] : [us, canada],
                .. BandOf(frostbite),
                "For bare skin, in wind as it blows 10 m up. Nothing gets colder than the air.",
            ],
            Figures =
            [
                WeatherFigures.AmericanChill.Of(american), WeatherFigures.CanadianChill.Of(canadian),
                .. frostbite.Soonest is { } soonest ? (Figure[])[WeatherFigures.Frostbite.Of(soonest)] : [],
            ],
            Reasons =
            [
                "US: 35.74 + 0.6215 T - 35.75 V^0.16 + 0.4275 T V^0.16, °F and mph. Canada: 13.12 + 0.6215 T - 11.37 V^0.16 + 0.3965 T V^0.16, °C and km/h; below 5 km/h a form from memory.",
                "Frostbite by the Canadian index, rounded: to -27 low, from -28 10 to 30 min, from -40 5 to 10, from -48 2 to 5, from -55 under 2 (Environment Canada).",
                .. frostbite.Computed is not { } computed ? [] : (string[])[$"Its formula for the most susceptible few per cent gives {computed.Minutes.ToString("0.0", CultureInfo.InvariantCulture)} min. Band and formula disagree both ways: the shorter is given."],
            ],
            Cautions = WeatherCautions.Cold,
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static string Risk(Frostbite frostbite) => frostbite.Soonest switch
    {
        null => "frostbite is not likely soon, which is not never",
        { Minutes: < 2 } => "bare skin can freeze in under 2 min",
        { } soonest => $"bare skin can freeze in {Math.Floor(soonest.Minutes):0} min",
    };

    private static IEnumerable<string> BandOf(Frostbite frostbite)
    {
        var band = frostbite.Band switch
        {
            { Soonest: { } soonest, Latest: { } latest } => soonest.Minutes < 1 ? $"under {latest.Minutes:0} min" : $"{soonest.Minutes:0} to {latest.Minutes:0} min",
            _ => "low",
        };
        yield return $"Frostbite by the index: {band}{(frostbite.FormulaIsSooner ? "; a formula for the most susceptible says sooner, and that stands above" : "")}.";
        if (frostbite.FasterInThisWind)
        {
            yield return "In steady wind above 50 km/h (31 mph) it goes faster still.";
        }
    }

    private static string Whole(double index) => WindChill.Printed(index).ToString(CultureInfo.InvariantCulture);
}
