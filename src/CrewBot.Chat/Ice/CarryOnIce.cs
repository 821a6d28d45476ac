using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Rigs;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice carry</c>: what published rules ask for under a load beside what was measured at that very spot today.</summary>
public sealed class CarryOnIce(IceOptions options, CrewBook book) : ICommandHandler
{
    private const int MostBadNews = 2;

    public CommandInfo Info { get; } = new(
        "ice carry", "What a load asks of the ice, beside what was measured at that spot today",
        "/ice carry water:\"Loon Basin\" spot:\"north bay\" people:6 shelter:cabin stay:1h warmest:20F",
        [
            options.WaterSaid, options.Spot, options.People, options.Shelter, options.Machine, options.Weight, options.Stay, options.Warmest,
            options.FreezingSince, options.Air, options.Permitted,
        ])
    {
        FromAnywhere = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.ReadAsync(request, session => CarryAsync(request, session), cancellationToken);

    private async Task<Reply> CarryAsync(Request request, CrewSession session)
    {
        var meant = await WaterMeant.FindAsync(session, request, options);
        return meant.Fault is { } fault ? Reply.Refuse(fault) : await CarryAsync(request, session, meant.Value!);
    }

    private async Task<Reply> CarryAsync(Request request, CrewSession session, WaterMeant water)
    {
        var spot = request.GetOr(options.Spot, null!);
        if (StayOffPlace.In(water.Name, spot) is { } word)
        {
            return new Reply
            {
                Headline = $"No number is ever given for a place like that ({word}): stay off, or ask the local authority.",
                Cautions = [.. IceCautions.Of(isBad: false)],
            };
        }

        var read = IceLoadRead.Of(request, options);
        if (read.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var (load, air) = (read.Value!, AirOf(request));
        if (air.FreezingSince > request.At)
        {
            return Reply.Refuse("freezing-since: that is in the future. Give since when it has been below freezing, such as freezing-since:\"5h ago\".");
        }

        var rules = await IceRules.ReadAsync(session);
        var requirement = Requirement.For(load, rules.Authority, rules.Figures, request.GetOr(options.Permitted, false), air, request.At);
        var standing = await new WaterRepository(session).FindAsync(water.Name) is { } id
            ? await IcePicture.StandingAsync(session, id, spot, air, request.At)
            : CombinedReports.At([], spot, air, request.At);
        var answer = AnswerOf(request, load, CarryAnswer.Of(requirement, standing), water);
        return answer with { Lines = [.. await SpotOffer.ForAsync(session, water.Name, spot), .. answer.Lines] };
    }

    private AirSince AirOf(Request request) => new(
        request.TryGet(options.Warmest, out var warmest) ? warmest : null,
        request.TryGet(options.FreezingSince, out var since) ? since.From(request.At, request.Caller.Zone) : null,
        request.TryGet(options.Air, out var present) ? present : null);

    private Reply AnswerOf(Request request, IceLoad load, CarryAnswer answer, WaterMeant water)
    {
        var (requirement, standing) = (answer.Requirement, answer.Standing);
        var isBad = answer.Verdict is CarryVerdict.StayOff or CarryVerdict.LessThanRequired;
        return new Reply
        {
            Headline = $"{water.Name}{(request.TryGet(options.Spot, out var spot) ? $", {spot}" : "")}: {VerdictOf(request, answer)}",
            Lines =
            [
                .. IceLoadRead.NeedsNoWeight(request, options) ? (string[])[] : [$"The load: {request.Show.Fish(load.Total)}{(load.Stands ? ", standing in one place" : "")}."],
                .. standing.Blocking.Count > 0 ? BadNewsLines(request, standing) : FigureLines(request, answer),
                .. Understanding.Of(request, AssumedIn(request, load, water)),
            ],
            Figures = IceLoadRead.NeedsNoWeight(request, options) ? [] : [.. FiguresOf(load, answer)],
            Reasons = standing.Blocking.Count > 0 ? [] : [.. requirement.Figures.Select(figure => $"{IceShow.Required(figure.Thickness, request.Units)}: {RuleOf(request, figure)}.")],
            Cautions =
            [
                .. load.IsRoadVehicle ? (string[])[IceCautions.Vehicle] : load.Stands ? [IceCautions.Crowd] : [],
                .. IceCautions.Of(isBad),
            ],
            Actions = [.. standing.AsksAirSince is { } measured ? AirButtons(request, water, measured) : [], .. ReplyAction.WhyAndShare(request)],
        };
    }

    // What keeps most answers back is said with one press.
    private IEnumerable<ReplyAction> AirButtons(Request request, WaterMeant water, DateTimeOffset measured)
    {
        var asked = new Dictionary<string, string>(request.Written) { [options.WaterSaid.Name] = water.Name };
        ReplyAction Since(string label, string since) => new(
            label, ActionKind.Run, request.Path, new Dictionary<string, string>(asked) { [options.FreezingSince.Name] = since });
        yield return Since("Froze the last 24 h", "24h ago");
        yield return Since("Froze since measured", measured.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture));
        yield return ReplyAction.Form("Other air", request.Path, asked, options.FreezingSince, options.Warmest, options.Air);
    }

    private static string VerdictOf(Request request, CarryAnswer answer) => answer.Verdict switch
    {
        CarryVerdict.MeetsTheFigure => "what was measured meets the published figure, which is no clearance",
        CarryVerdict.LessThanRequired => "less was measured than is asked for: stay off with this load",
        CarryVerdict.StayOff => answer.Standing.Why?.ToString(request.Show) ?? "under 4 in of clear ice: stay off",
        _ => answer.Standing.Why?.ToString(request.Show) ?? answer.Requirement.WhyNone!.ToString(request.Show),
    };

    // Where to stay off, a thickness is only a temptation.
    private static IEnumerable<string> BadNewsLines(Request request, IceStanding standing) => standing.Blocking
        .Take(MostBadNews)
        .Select(bad => $"{NameOf(bad)}: {IceWords.Against(bad.Hazards)}, {IceShow.Age(request.At - (bad.MeasuredAt ?? bad.FiledAt))}.");

    private static string NameOf(IceReport bad) => bad switch
    {
        { IsPartners: true, Spot: null } => "Bad news of a partner crew, which does not share the spot",
        { IsPartners: true } => $"Bad news of a partner crew at {bad.Spot}",
        { Spot: null } => $"Bad news #{bad.Number}, no spot named",
        _ => $"Bad news #{bad.Number} at {bad.Spot}",
    };

    private static IEnumerable<string> FigureLines(Request request, CarryAnswer answer)
    {
        var (requirement, standing) = (answer.Requirement, answer.Standing);
        if (requirement.Thickness is not { } asked)
        {
            yield return "A thickness would say nothing here. /ice board shows what was reported.";
            yield break;
        }

        yield return $"Asked for: {IceShow.Required(asked, request.Units)} of new clear ice: {RuleOf(request, requirement.Figures[0])}.";
        yield return standing is { Least: { } least, Governing: { } governing }
            ? $"Measured: least {IceShow.Measured(least, request.Units)} as clear ice, by {governing.MeasuredBy}, {IceShow.Age(request.At - governing.MeasuredAt!.Value)}{SpreadOf(request, standing)}."
            : standing.AsksAirSince is { } measured
            ? $"Measured {IceShow.Age(request.At - measured)}. Has it been below freezing since? Press a button, or add warmest:20F (of the last 24 h) or freezing-since:08:00."
            : $"{RigWords.Sentence(standing.Why!.ToString(request.Show))}. /ice report files a measurement.";
        yield return "The figure is for uniform, clear, sound ice, and yours may be none of these.";
    }

    private static string SpreadOf(Request request, IceStanding standing) =>
        standing.Spread is { } spread && standing.Supporting.Sum(report => report.Holes.Count) is > 1 and var holes
            ? $"; {holes} holes from {IceShow.Measured(spread.Least, request.Units)} to {IceShow.Measured(spread.Most, request.Units)}"
            : "";

    private List<string> AssumedIn(Request request, IceLoad load, WaterMeant water)
    {
        List<string> assumed = water.Because is { } because ? [because] : [];
        if (!request.Has(options.People))
        {
            assumed.Add("one person");
        }

        if (load.Stands && !request.Has(options.Stay))
        {
            assumed.Add($"{IceLoad.LongestStay.Hours:0} h at the most in one place");
        }

        return assumed;
    }

    private static IEnumerable<Figure> FiguresOf(IceLoad load, CarryAnswer answer)
    {
        yield return IceFigures.Load.Of(load.Total);
        if (answer.Standing.Blocking.Count > 0)
        {
            yield break;
        }

        if (answer.Requirement.Thickness is { } asked)
        {
            yield return IceFigures.Required.Of(asked);
        }

        if (answer is { Requirement.Thickness: not null, Standing: { Least: { } least, Spread: { } spread } })
        {
            yield return IceFigures.Effective.Of(least);
            yield return IceFigures.Least.Of(spread.Least);
            yield return IceFigures.Most.Of(spread.Most);
        }
    }

    private static string RuleOf(Request request, IceFigure figure) => $"{figure.Rule.ToString(request.Show)} ({figure.Source}, {figure.Date})";
}
