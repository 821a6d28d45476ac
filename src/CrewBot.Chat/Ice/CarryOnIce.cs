using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice carry</c>: what published rules ask for under a load beside what was measured at that very spot today.</summary>
public sealed class CarryOnIce(IceOptions options, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice carry", "What a load asks of the ice, beside what was measured at that spot today",
        "/ice carry water:\"Loon Basin\" spot:\"north bay\" people:6 shelter:cabin stay:1h warmest:20F",
        [
            options.Water, options.Spot, options.People, options.Shelter, options.Machine, options.Weight, options.Stay, options.Warmest, options.Air,
            options.Permitted,
        ]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.ReadAsync(request, session => CarryAsync(request, session), cancellationToken);

    private async Task<Reply> CarryAsync(Request request, CrewSession session)
    {
        var (water, spot) = (request.Get(options.Water).Name, request.GetOr(options.Spot, null!));
        if (StayOffPlace.In(water, spot) is { } word)
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

        var load = read.Value!;
        var air = new AirSince(
            request.TryGet(options.Warmest, out var warmest) ? warmest : null, null, request.TryGet(options.Air, out var present) ? present : null);
        var rules = new IceRuleRepository(session);
        var requirement = Requirement.For(
            load, await rules.AuthorityAsync(), await rules.FiguresAsync(), request.GetOr(options.Permitted, false), air, request.At);
        var picture = await new WaterRepository(session).FindAsync(water) is { } id
            ? await IcePicture.ReadAsync(session, id, request.At)
            : new IcePicture([], []);
        return AnswerOf(request, load, CarryAnswer.Of(requirement, picture.At(spot, air, request.At)), spot is null ? water : $"{water}, {spot}");
    }

    private static Reply AnswerOf(Request request, IceLoad load, CarryAnswer answer, string place)
    {
        var (requirement, standing) = (answer.Requirement, answer.Standing);
        var isBad = answer.Verdict is CarryVerdict.StayOff or CarryVerdict.LessThanRequired;
        return new Reply
        {
            Headline = $"{place}: {VerdictOf(request, answer)}",
            Lines =
            [
                $"The load: {request.Show.Fish(load.Total)}{(load.Stands ? ", standing in one place" : "")}.",
                requirement.Thickness is { } asked
                    ? $"Asked for: {IceShow.Required(asked, request.Units)} of new clear ice: {RuleOf(request, requirement.Figures[0])}."
                    : $"Asked for: no figure. {Capital(requirement.WhyNone!.ToString(request.Show))}.",
                .. MeasuredLines(request, standing),
                "The figure is for uniform, clear, sound ice, and yours may be none of these.",
            ],
            Figures = [.. FiguresOf(load, answer)],
            Reasons = [.. requirement.Figures.Select(figure => $"{IceShow.Required(figure.Thickness, request.Units)}: {RuleOf(request, figure)}.")],
            Cautions =
            [
                .. load.IsRoadVehicle ? (string[])[IceCautions.Vehicle] : load.Stands ? [IceCautions.Crowd] : [],
                .. IceCautions.Of(isBad),
            ],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static string VerdictOf(Request request, CarryAnswer answer) => answer.Verdict switch
    {
        CarryVerdict.MeetsTheFigure => "what was measured meets the published figure, which is no clearance",
        CarryVerdict.LessThanRequired => "less was measured than is asked for: stay off with this load",
        CarryVerdict.StayOff => answer.Standing.Why?.ToString(request.Show) ?? "under 4 in of clear ice: stay off",
        _ => answer.Standing.Why?.ToString(request.Show) ?? answer.Requirement.WhyNone!.ToString(request.Show),
    };

    private static IEnumerable<string> MeasuredLines(Request request, IceStanding standing)
    {
        foreach (var bad in standing.Blocking.Take(2))
        {
            yield return $"Bad news #{bad.Number}{(bad.Spot is { } spot ? $" at {spot}" : ", no spot named")}: {string.Join(", ", bad.Hazards.Select(IceWords.Of).DefaultIfEmpty("thin or weak ice"))}, {IceShow.Age(request.At - (bad.MeasuredAt ?? bad.FiledAt))}.";
        }

        if (standing is { Least: { } least, Spread: { } spread, Supporting: [var newest, ..] })
        {
            yield return $"Measured: least {IceShow.Measured(least, request.Units)} as clear ice, by {newest.MeasuredBy}, {IceShow.Age(request.At - newest.MeasuredAt!.Value)}; {standing.Supporting.Count} report(s), holes from {IceShow.Measured(spread.Least, request.Units)} to {IceShow.Measured(spread.Most, request.Units)}.";
        }
        else if (standing.Why is { } why)
        {
            yield return $"Measured: {why.ToString(request.Show)}.{(standing.Blocking.Count == 0 ? " /ice report files a measurement; warmest:20F says how warm it has been." : "")}";
        }
    }

    private static IEnumerable<Figure> FiguresOf(IceLoad load, CarryAnswer answer)
    {
        yield return IceFigures.Load.Of(load.Total);
        if (answer.Requirement.Thickness is { } asked)
        {
            yield return IceFigures.Required.Of(asked);
        }

        if (answer.Standing is { Least: { } least, Spread: { } spread })
        {
            yield return IceFigures.Effective.Of(least);
            yield return IceFigures.Least.Of(spread.Least);
            yield return IceFigures.Most.Of(spread.Most);
        }
    }

    private static string RuleOf(Request request, IceFigure figure) => $"{figure.Rule.ToString(request.Show)} ({figure.Source}, {figure.Date})";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
