using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;
using UnitsNet;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice board</c>: what was reported of a water, newest first, with what is wrong there first of all.</summary>
public sealed class ShowIceBoard(IceOptions options, CrewBook book) : ICommandHandler
{
    private const int MostShown = 5;
    private const int MostPictured = 40;
    private const int MostStandingShown = 3;
    private const int MostClosedNamed = 3;

    public CommandInfo Info { get; } = new(
        "ice board", "What was reported of a water: newest first, with standing hazards", "/ice board water:\"Loon Basin\"", [options.WaterSaid])
    {
        OnPlainWords = IceQuestion.AnswerTo,
        AlsoSaid = ["ice list", "ice map", "ice status", "ice check", "ice conditions", "ice reports"],
        FromAnywhere = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.ReadAsync(request, session => ShowAsync(request, session), cancellationToken);

    private async Task<Reply> ShowAsync(Request request, CrewSession session)
    {
        var meant = await WaterMeant.FindAsync(session, request, options);
        if (meant.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var (water, because) = meant.Value!;
        var reply = await OfWaterAsync(request, session, water);
        return because is null ? reply : reply with { Lines = [.. reply.Lines, .. Understanding.Of(request, [because])] };
    }

    private static async Task<Reply> OfWaterAsync(Request request, CrewSession session, string water)
    {
        if (await new WaterRepository(session).FindAsync(water) is { } id
            && await IceBoard.ReadAsync(session, id, water, MostPictured, request.At) is { IsEmpty: false } board)
        {
            var rules = await IceRules.ReadAsync(session);
            return BoardOf(request, water, board) with
            {
                Pictures = [Picture.Of("ice-board", request, () => IceBoardPictures.Of(request, water, board, rules))],
                Actions = [ReplyAction.Picture(request), .. ReplyAction.WhyAndShare(request)],
            };
        }

        return new Reply
        {
            Headline = $"Nobody has reported ice on {water}: that says nothing about it.",
            Lines = ["/ice report files what you measure."],
            Cautions = IceCautions.Of(isBad: false),
        };
    }

    private static Reply BoardOf(Request request, string water, IceBoard board)
    {
        var standing = board.Standing.Take(MostStandingShown).ToList();
        var more = board.Standing.Count - standing.Count;
        var rest = board.Newest.Where(filed => !standing.Any(bad => !bad.IsPartners && bad.Number == filed.Number)).Take(MostShown - standing.Count - (more > 0 ? 1 : 0));
        return new Reply
        {
            Headline = board.Newest is [var newest, ..]
                ? $"Ice reported on {water}: newest {IceSheet.Age(newest, request.At)}"
                : $"Nobody of this crew has reported ice on {water}; a partner crew has bad news of it",
            Lines =
            [
                .. standing.Select(filed => $"STANDS: {IceSheet.Standing(filed, water, request)}"),
                .. more > 0 ? (string[])[$"…and bad news of {Counted.Of(more, "more spot", "more spots")}."] : [],
                .. rest.Select(filed => IceSheet.Line(filed, water, request)),
                board.Day is { } day
                    ? $"Of the last 24 h, over all spots: {SpanOf(day, request)}; the least counts as {IceSheet.ClearText(day.Counts, day.Counts.Nanometers >= day.Least.Nanometers, request.Units)}."
                    : NoFigure(board, water, request),
                .. Closed(board.Closed, request),
                "A thaw, 24 h or another spot voids any of these.",
            ],
            Figures = board.Day is { } figures ? [IceFigures.Effective.Of(figures.Counts), IceFigures.Least.Of(figures.Least), IceFigures.Most.Of(figures.Most)] : [],
            Cautions = IceCautions.Of(board.Standing.Count > 0),
        };
    }

    // What stands right above was seen: that there is nothing would be read as a mistake.
    private static string NoFigure(IceBoard board, string water, Request request)
    {
        var today = board.Newest.Where(filed => request.At - (filed.Entry.MeasuredAt ?? filed.Entry.FiledAt) <= CombinedReports.Fresh).ToList();
        return (today.FirstOrDefault(filed => filed.Entry.Page.Holes.Count > 0) ?? today.FirstOrDefault()) is { } seen && IceSheet.WhyNoFigure(seen, water) is { } why
            ? why
            : "Nothing measured within 24 h: no figure.";
    }

    private static string SpanOf((Length Least, Length Most, Length Counts) day, Request request)
    {
        var (least, most) = (IceShow.Measured(day.Least, request.Units), IceShow.Measured(day.Most, request.Units));
        return least == most ? least : $"{least} to {most}";
    }

    // Ice that broke once is worth knowing of all winter.
    internal static IEnumerable<string> Closed(IReadOnlyList<FiledIce> closed, Request request)
    {
        if (closed.Count > 0)
        {
            var named = closed.Take(MostClosedNamed).Select(filed => $"#{filed.Number} {filed.Entry.Spot ?? "no spot named"}, {IceSheet.Age(filed, request.At)}");
            yield return $"Bad news closed this season: {string.Join("; ", named)}{(closed.Count > MostClosedNamed ? $"; and {closed.Count - MostClosedNamed} more" : "")}.";
        }
    }
}
