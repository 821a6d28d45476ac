using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby close</c>: no more entries, joining or leaving.</summary>
public sealed class CloseDerby(DerbyOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby close", "Close the derby: no more entries", "/derby close", [options.Derby])
    {
        Writes = true,
        Role = Role.Steward,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindAsync(request, options, session, member.Id);
            if ((found.Fault ?? (found.Value!.IsClosed ? $"{found.Value.Name} is closed already. /derby reopen opens it again." : null)) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var derby = found.Value!;
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Closed(at, request.At, member.Id));
            await new BoardRepository(session).TouchAsync(derby.Number);
            var sheet = await DerbySheet.ReadAsync(session, derby with { IsClosed = true }, knowledge);
            var waiting = sheet.Standings.Out.Count(gone => gone.Why is OutReason.Waiting or OutReason.Disputed or OutReason.Late);
            var (until, words) = (derby.Settings.Window.LastWord + derby.Settings.ProtestTime, new DerbyWords(derby, knowledge));
            return new Reply
            {
                Headline = $"{derby.Name} is closed",
                Lines =
                [
                    .. waiting > 0 ? (string[])[$"{waiting} {(waiting == 1 ? "entry still waits and does" : "entries still wait and do")} not count: /derby rulings."] : [],
                    .. until > request.At ? (string[])[$"Protests are heard until {words.Time(until, request.At)}."] : [],
                    "/derby results gives them with a file.",
                ],
                Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Waiting.Of(waiting)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
