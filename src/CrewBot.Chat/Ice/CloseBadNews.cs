using CrewBot.Chat.Commands;
using CrewBot.Chat.Trips;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice close</c>: a steward ends bad news, with a reason and a new measurement of that spot.</summary>
public sealed class CloseBadNews(IceOptions options, CrewBook book, TripDesk trips) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice close", "Steward: end bad news of a spot, after a new measurement there", "/ice close report:2 measured:3 reason:\"drilled all round the old hole\"",
        [options.Number, options.With, options.Reason])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => CloseAsync(request, session, member), cancellationToken);

    private async Task<Reply> CloseAsync(Request request, CrewSession session, CrewMember member)
    {
        if (request.Caller.Role < Role.Steward)
        {
            return Reply.Refuse("Only a steward closes bad news.");
        }

        var (number, with, reason) = (request.Get(options.Number), request.Get(options.With), request.Get(options.Reason));
        var bad = await IceDesk.FindAsync(session, number);
        var measured = await IceDesk.FindAsync(session, with);
        if ((bad.Fault ?? measured.Fault ?? FaultOf(bad.Value!, measured.Value!, request.At)) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        await new IceReportRepository(session).CloseAsync(number, with, member.Id, reason, request.At);
        var told = await new IceRelay(session, request, await IceDesk.WaterOfAsync(session, bad.Value!)).CloseAsync(bad.Value!, with, reason);
        await trips.IceChangedAsync(request, session, bad.Value!.Entry.WaterId);
        return new Reply
        {
            Headline = $"Bad news #{number} is closed after measurement #{with}.",
            Lines = [$"Reason: {reason}", "It stays listed for the season. Other bad news of the spot stands until it is closed too."],
            Figures = [IceFigures.Report.Of(number), IceFigures.Told.Of(told)],
            Cautions = IceCautions.Of(isBad: false),
        };
    }

    private static string? FaultOf(FiledIce bad, FiledIce measured, DateTimeOffset now)
    {
        var (was, found) = (bad.ToReport(), measured.ToReport());
        return !was.IsBadNews ? $"Report #{bad.Number} is no bad news."
            : was.Closed ? $"Report #{bad.Number} is closed already: {bad.ClosedReason}"
            : !found.CanSupport ? $"Report #{measured.Number} says not who measured what, where and when: it closes nothing."
            : found.IsBadNews ? $"Report #{measured.Number} is bad news itself: it closes nothing."
            : measured.Entry.WaterId != bad.Entry.WaterId || (was.Spot is { } spot && !SpotName.MayBeSame(spot, found.Spot!))
                ? $"Report #{measured.Number} was measured elsewhere than #{bad.Number}: it closes nothing."
            : found.MeasuredAt <= (was.MeasuredAt ?? was.FiledAt) ? $"Report #{measured.Number} was measured before #{bad.Number}: it closes nothing."
            : !CombinedReports.IsFresh(found, now) ? $"Report #{measured.Number} is older than 24 h: measure again."
            : null;
    }
}
