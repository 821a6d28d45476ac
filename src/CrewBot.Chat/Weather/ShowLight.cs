using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Crews;
using CrewBot.Chat.Trips;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Weather;
using CrewBot.Storage.Crews;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>Answers <c>/weather light</c>: sun and civil twilight over a water of the crew, or anywhere.</summary>
public sealed class ShowLight : ICommandHandler
{
    private static readonly CommandOption<(decimal Latitude, decimal Longitude)> At = CommandOption.Optional(
        "at", "Where, if not over a water of the crew", new CoordinatesReader());

    private static readonly CommandOption<DayTime> Date = CommandOption.Optional("date", "Which day, if not today", new DayReader());

    private static readonly CommandOption<TimeZoneInfo> Zone = CommandOption.Optional("zone", "Whose clock, if not the crew's", new ZoneReader());

    private readonly CommandOption<WaterRules> _water;
    private readonly CrewBook _book;

    public ShowLight(TradeKnowledge knowledge, CrewBook book)
    {
        _book = book;
        _water = CommandOption.Optional("water", "Over which water of the crew", new WaterReader(knowledge.Waters));
        Info = new(
            "weather light", "Sunrise, sunset and twilight over a water", "/weather light at:\"49.9, -95.1\" date:2027-01-16 zone:America/Winnipeg",
            [_water, At, Date, Zone])
        {
            NeedsNoCrew = true,
            AlsoSaid = ["what time is sunset", "what time is sunrise", "when is sunset", "when is sunrise", "when is it dark", "when does it get dark"],
        };
    }

    public CommandInfo Info { get; }

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        if (request.TryGet(At, out var given))
        {
            return request.Has(_water)
                ? Reply.Refuse("water and at both say where: keep one.")
                : Answer(request, given, CoordinatesText(given), isChosen: false);
        }

        if (request.Caller.Crew is null)
        {
            return Reply.Refuse("Say where: at:\"49.9, -95.1\" takes latitude and longitude.");
        }

        var waters = await _book.ReadAsync(request, session => new WaterRepository(session).AllAsync(), cancellationToken);
        var named = request.TryGet(_water, out var asked) ? asked.Name : null;
        var placed = waters.Where(water => water.At is not null && (named is null || water.Name == named)).ToList();
        return placed is [var only] ? Answer(request, only.At!.Value, only.Name, isChosen: named is null)
            : named is not null ? Reply.Refuse($"Nobody said where {named} lies: give at:\"49.9, -95.1\", or its owner says so with /crew setup water:\"{named}\" at:\"49.9, -95.1\".")
            : placed.Count == 0 ? Reply.Refuse("Say where: at:\"49.9, -95.1\", or a water that the crew's owner has placed with /crew setup.")
            : Reply.Refuse($"Which water? {string.Join(", ", placed.Select(water => water.Name))}: give it as water.");
    }

    private static Reply Answer(Request request, (decimal Latitude, decimal Longitude) at, string place, bool isChosen)
    {
        var zone = request.GetOr(Zone, request.Caller.Zone);
        var today = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(request.At, zone).DateTime);
        var date = request.TryGet(Date, out var said)
            ? DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(said.From(request.At, zone), zone).DateTime)
            : today;
        var noon = date.ToDateTime(new TimeOnly(12, 0));
        var light = Daylight.Of(date, Angle.FromDegrees((double)at.Latitude), Angle.FromDegrees((double)at.Longitude), zone.GetUtcOffset(noon));
        return new Reply
        {
            Headline = $"{place}, {date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture)}: {LightWords.Sun(light.Sun)}",
            Lines =
            [
                $"{LightWords.Twilight(light)}.",
                $"The sun stands highest at {LightWords.Clock(light.Noon)}.",
                .. date == today && LightWords.Left(light.Sun, request.At) is { } left ? (string[])[left] : [],
                $"Times by the clock of {zone.Id}.",
                .. Understanding.Of(request, Assumed(request, place, isChosen)),
            ],
            Figures = [.. LightWords.Figures(light)],
            Reasons = ["NOAA's solar method after Meeus: the sun's rim at the horizon, 90.833° from the zenith; civil twilight at 96°. About 1 min off below 66° of latitude, 2 at 78°, more where the sun only grazes the horizon."],
            Cautions = WeatherCautions.Dark,
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static List<string> Assumed(Request request, string place, bool isChosen)
    {
        List<string> assumed = [];
        if (isChosen)
        {
            assumed.Add($"over {place}, the one water whose place is known");
        }

        if (!request.Has(Date))
        {
            assumed.Add("today");
        }

        return assumed;
    }

    private static string CoordinatesText((decimal Latitude, decimal Longitude) at) =>
        string.Create(CultureInfo.InvariantCulture, $"{at.Latitude:0.##}, {at.Longitude:0.##}");
}
