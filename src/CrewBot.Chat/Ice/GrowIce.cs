using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Ice;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice growth</c>: whether the weather has been making ice. How thick any is does not follow, and is not said.</summary>
public sealed class GrowIce(IceOptions options) : ICommandHandler
{
    private const int MostBytes = 200_000;

    public CommandInfo Info { get; } = new(
        "ice growth", "Whether the weather has been making ice: background, no thickness follows", "/ice growth days:\"28/14 25/10 20/-2 18/-6 22/1F\"",
        [options.Days, options.DayFile, options.Snow]);

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var reading = await DaysAsync(request, cancellationToken);
        return reading.Fault is { } fault ? Reply.Refuse(fault) : Answer(request, reading.Value!);
    }

    private async Task<Reading<DayList>> DaysAsync(Request request, CancellationToken cancellationToken)
    {
        var isTyped = request.TryGet(options.Days, out var typed);
        if (!request.TryGet(options.DayFile, out var file))
        {
            return isTyped ? typed! : new Misread($"Give days, {options.Days.Accepts}; or file, a CSV with the columns date, max and min.");
        }

        if (isTyped)
        {
            return new Misread("days and file say the same thing: keep one.");
        }

        var content = await request.Files.ReadAsync(file, MostBytes, cancellationToken);
        return content.Fault is { } missing
            ? new Misread(missing)
            : DayFile.Read(content.Value, request.Units, DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(request.At, request.Caller.Zone).DateTime));
    }

    private Reply Answer(Request request, DayList list)
    {
        var (days, weather) = (list.Days, GrowingWeather.Of(list.Days));
        return new Reply
        {
            Headline = $"{VerdictOf(weather.Kind)}: {Frost(request, weather.Frost)} of frost in {Days(days.Count)}",
            Lines =
            [
                $"{days.Count(day => FreezingDegreeDays.Of(day).Celsius > 0)} of {Days(days.Count)} froze on the whole; {days.Count(day => day.Most.DegreesCelsius >= 0)} reached the freezing point.",
                .. Lately(request, weather, days.Count),
                .. request.TryGet(options.Snow, out var snow) && weather.Under(snow.Length) is { } under
                    ? (string[])[$"Under that snow ice grows at {Percent(under.New)} (new snow) to {Percent(under.Packed)} (packed) of the pace of bare ice."]
                    : [],
                .. weather.Kind == IceWeather.Freezing ? [] : (string[])["Every measurement made before the air reached the freezing point is void. Ice goes faster than it comes, and its strength goes first."],
                "How thick any ice is does not follow from weather: measure it.",
                .. Understanding.Of(request, list.LacksUnits ? [request.Units == CrewUnits.Metric ? "°C" : "°F"] : []),
            ],
            Figures = [IceFigures.Frost.Of(weather.Frost), IceFigures.Lately.Of(weather.Lately), IceFigures.Days.Of(days.Count)],
            Reasons = [.. ReasonsOf(weather)],
            Cautions = IceCautions.Of(weather.Kind is IceWeather.Thawing or IceWeather.None),
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static string VerdictOf(IceWeather kind) => kind switch
    {
        IceWeather.Freezing => "The weather has been making ice",
        IceWeather.ThawingByDay => "The weather makes ice by night and weakens it by day",
        IceWeather.Thawing => "The weather has been taking ice away",
        _ => "The weather has made no ice that lasts",
    };

    private static IEnumerable<string> Lately(Request request, GrowingWeather weather, int given)
    {
        var last = given < GrowingWeather.LateDays ? given == 1 ? "That day" : $"Those {given} days" : $"The last {GrowingWeather.LateDays} days";
        if (weather.ShareLately is { } share)
        {
            yield return $"{last} brought {Frost(request, weather.Lately)}, {Percent(share)} of all the growing: ice slows its own growth.";
        }
        else if (weather.Lately.Celsius < 0)
        {
            yield return $"{last} took {Frost(request, new DegreeDays(-weather.Lately.Celsius))} away.";
        }
    }

    private static IEnumerable<string> ReasonsOf(GrowingWeather weather)
    {
        yield return "Freezing degree-days: the freezing point less the mean of each day's max and min, summed; thaws subtract, and the sum never falls below zero.";
        yield return "Growth goes with the root of that sum (Stefan; US Army Corps EM 1110-2-1612). Snow and air slow it (G. D. Ashton, encyclopedia article on lake and river ice; its snow term from memory).";
        if (weather.FullerForm is { } fuller)
        {
            yield return $"For this frost Ashton's form comes to {Percent(fuller)} of the most that the root allows: the simple rule flatters thin ice, which is the ice that kills.";
        }

        yield return "Current, springs, wind, snow and depth do the rest: somebody who computed a thickness from frost found that the lake did not have it.";
    }

    private static string Frost(Request request, DegreeDays frost)
    {
        var (customary, metric) = (
            string.Create(CultureInfo.InvariantCulture, $"{frost.Fahrenheit:0} °F·day"), string.Create(CultureInfo.InvariantCulture, $"{frost.Celsius:0} °C·day"));
        return request.Units == CrewUnits.Metric ? $"{metric} ({customary})" : $"{customary} ({metric})";
    }

    private static string Percent(Ratio share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Max(1, Math.Floor(share.Percent)):0} %");

    private static string Days(int count) => Counted.Of(count, "day");
}
