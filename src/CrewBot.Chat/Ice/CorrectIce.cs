using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Trips;
using CrewBot.Core.Ice;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice correct</c>: puts what was meant in a report's place and on every copy of it.</summary>
public sealed class CorrectIce(IceOptions options, CrewBook book, TripDesk trips) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice correct", "Correct a report, and every copy of it", "/ice correct report:1 reason:\"read the tape wrong\" clear:4in",
        [options.Number, options.Reason, .. options.Details])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => CorrectAsync(request, session, member), cancellationToken);

    private async Task<Reply> CorrectAsync(Request request, CrewSession session, CrewMember member)
    {
        var number = request.Get(options.Number);
        var found = await IceDesk.FindOwnAsync(request, session, member, number);
        if (found.Fault is { } refusal)
        {
            return Reply.Refuse(refusal);
        }

        var before = found.Value!;
        var corrected = new IceDraft(options, request).Correcting(before.Entry);
        if (options.Details.All(detail => !request.Has(detail)))
        {
            return Reply.Refuse($"Nothing is corrected by that. Give what is right, such as /ice correct report:{number} clear:4in reason:\"read the tape wrong\"");
        }

        if ((corrected.Fault ?? FaultOf(request, before, corrected.Value!)) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var (reports, reason) = (new IceReportRepository(session), request.Get(options.Reason));
        await reports.ReplaceAsync(number, corrected.Value!, member.Id, reason, request.At);
        var now = (await reports.FindAsync(number))!;
        var water = await IceDesk.WaterOfAsync(session, now);
        var told = await new IceRelay(session, request, water).CorrectAsync(before, now, reason);
        await trips.IceChangedAsync(request, session, now.Entry.WaterId);
        string?[] lines =
        [
            $"{IceSheet.Found(now, water, request.Units)}.",
            IceSheet.CountsAs(now, water, request.Units),
            $"Reason: {reason}",
            told > 0 ? $"{Counted.Of(told, "copy is", "copies are")} being changed, with what it said struck through." : "It had been told to no channel.",
        ];
        return new Reply
        {
            Headline = $"Ice report #{number} corrected: {water}{(now.Entry.Spot is { } spot ? $", {spot}" : "")}",
            Struck = [IceSheet.Found(before, water, request.Units)],
            Lines = [.. lines.Where(line => line is not null).Select(line => line!)],
            Figures = [IceFigures.Report.Of(number), IceFigures.Told.Of(told)],
            Cautions = IceCautions.Of(now.ToReport().IsBadNews),
        };
    }

    // An edit rings nobody, and bad news outlives whoever brought it.
    private static string? FaultOf(Request request, FiledIce before, IceEntry after) =>
        after.Page.Hazards.Any(hazard => hazard.IsUrgent() && !before.Entry.Page.Hazards.Contains(hazard))
            ? "A correction rings nobody: file that as news of its own with /ice report, so that everybody hears of it."
        : before.ToReport().IsBadNews && !SaysTheSame(before, after) && request.Caller.Role < Role.Steward
            ? $"Report #{before.Number} is bad news: only a steward can take its hazards, its spot or its ice away."
        : null;

    private static bool SaysTheSame(FiledIce before, IceEntry after) =>
        FiledIce.ReportOf(after).IsBadNews && after.Spot == before.Entry.Spot && before.Entry.Page.Hazards.All(after.Page.Hazards.Contains);
}
