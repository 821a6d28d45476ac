using CrewBot.Chat.Commands;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice board</c>: what was reported of a water, newest first, with what is wrong there first of all.</summary>
public sealed class ShowIceBoard(IceOptions options, CrewBook book) : ICommandHandler
{
    private const int MostShown = 5;
    private const int MostOpenShown = 3;
    private const int MostClosedNamed = 3;

    public CommandInfo Info { get; } = new(
        "ice board", "What was reported of a water: newest first, with standing hazards", "/ice board water:\"Loon Basin\"", [options.Water])
    {
        FromAnywhere = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.ReadAsync(request, session => ShowAsync(request, session), cancellationToken);

    private async Task<Reply> ShowAsync(Request request, CrewSession session)
    {
        var water = request.Get(options.Water).Name;
        if (await new WaterRepository(session).FindAsync(water) is not { } id
            || await new IceReportRepository(session).NewestAsync(id, MostShown) is not { Count: > 0 } newest)
        {
            return new Reply
            {
                Headline = $"Nobody has reported ice on {water}: that says nothing about it.",
                Lines = ["/ice report files what you measure."],
                Cautions = IceCautions.Of(isBad: false),
            };
        }

        var picture = await IcePicture.ReadAsync(session, id, request.At);
        var open = picture.Open.Take(MostOpenShown).ToList();
        var rest = newest.Where(filed => open.All(bad => bad.Number != filed.Number)).Take(MostShown - open.Count - (picture.Open.Count > open.Count ? 1 : 0)).ToList();
        var closed = await new IceReportRepository(session).ClosedAsync(id, IceSeason.StartOf(request.At));
        var holes = picture.Today.Where(filed => IceSheet.IsNumbered(filed, water)).Select(filed => filed.ToReport()).Where(report => report.CanSupport).SelectMany(report => report.Holes).ToList();
        return new Reply
        {
            Headline = $"Ice reported on {water}: newest {IceSheet.Age(newest[0], request.At)}",
            Lines =
            [
                .. open.Select(filed => $"STANDS: {IceSheet.Line(filed, water, request)}"),
                .. picture.Open.Count > open.Count ? (string[])[$"…and bad news of {picture.Open.Count - open.Count} more spots."] : [],
                .. rest.Select(filed => IceSheet.Line(filed, water, request)),
                holes.Count > 0
                    ? $"Of the last 24 h, over all spots: {IceShow.Measured(holes.MinBy(Nm)!.Total, request.Units)} to {IceShow.Measured(holes.MaxBy(Nm)!.Total, request.Units)}; the least counts as {IceSheet.ClearText(holes, request.Units)}."
                    : "Nothing measured within 24 h: no figure.",
                .. Closed(closed, request),
                "A thaw, 24 h or another spot voids any of these.",
            ],
            Figures = holes.Count > 0
                ? [IceFigures.Effective.Of(holes.MinBy(EffectiveNm)!.Effective), IceFigures.Least.Of(holes.MinBy(Nm)!.Total), IceFigures.Most.Of(holes.MaxBy(Nm)!.Total)]
                : [],
            Cautions = IceCautions.Of(picture.Open.Count > 0),
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    // Ice that broke once is worth knowing of all winter.
    private static IEnumerable<string> Closed(IReadOnlyList<FiledIce> closed, Request request)
    {
        if (closed.Count > 0)
        {
            var named = closed.Take(MostClosedNamed).Select(filed => $"#{filed.Number} {filed.Entry.Spot ?? "no spot named"}, {IceSheet.Age(filed, request.At)}");
            yield return $"Bad news closed this season: {string.Join("; ", named)}{(closed.Count > MostClosedNamed ? $"; and {closed.Count - MostClosedNamed} more" : "")}.";
        }
    }

    private static double Nm(IceSection hole) => hole.Total.Nanometers;

    private static double EffectiveNm(IceSection hole) => hole.Effective.Nanometers;
}
