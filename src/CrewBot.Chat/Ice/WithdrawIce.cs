using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Chat.Trips;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Ice;

namespace CrewBot.Chat.Ice;

/// <summary>Answers <c>/ice withdraw</c>: strikes a report through wherever it was told.</summary>
public sealed class WithdrawIce(IceOptions options, CrewBook book, TripDesk trips) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "ice withdraw", "Take a report back, and strike every copy of it through", "/ice withdraw report:1 reason:\"wrong lake\"",
        [options.Number, options.Reason])
    {
        AlsoSaid = ["undo", "oops", "ice undo", "ice delete", "ice remove", "ice cancel", "ice void"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => WithdrawAsync(request, session, member), cancellationToken);

    private async Task<Reply> WithdrawAsync(Request request, CrewSession session, CrewMember member)
    {
        var (number, reason) = (request.Get(options.Number), request.Get(options.Reason));
        var found = await IceDesk.FindOwnAsync(request, session, member, number);
        if (found.Fault is { } refusal)
        {
            return Reply.Refuse(refusal);
        }

        var filed = found.Value!;
        if (filed.ToReport().IsBadNews && request.Caller.Role < Role.Steward)
        {
            return Reply.Refuse($"Report #{number} is bad news: only a steward can take it away.");
        }

        await new IceReportRepository(session).WithdrawAsync(number, member.Id, reason, request.At);
        var water = await IceDesk.WaterOfAsync(session, filed);
        var told = await new IceRelay(session, request, water).StrikeAsync(filed, reason);
        await trips.IceChangedAsync(request, session, filed.Entry.WaterId);
        return new Reply
        {
            Headline = $"Ice report #{number} is withdrawn.",
            Struck = [IceSheet.Found(filed, water, request.Units)],
            Lines = [$"Reason: {reason}", told > 0 ? $"{Counted.Of(told, "copy is", "copies are")} being struck through." : "It had been told to no channel."],
            Figures = [IceFigures.Report.Of(number), IceFigures.Told.Of(told)],
            Cautions = IceCautions.Of(isBad: false),
        };
    }
}
