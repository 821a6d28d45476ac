using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby close</c>: no more entries, joining or leaving.</summary>
public sealed class CloseDerby(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby close", "Close the derby: no more entries", "/derby close", [options.Derby])
    {
        AlsoSaid = ["derby end", "derby finish", "derby stop", "derby over", "end derby", "end the derby", "finish derby", "stop derby"],
        Writes = true,
        Role = Role.Steward,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => DerbyFinder.IsLive(derby, request.At));
            if ((found.Fault ?? (found.Value!.IsClosed ? $"{found.Value.Name} is closed already. /derby reopen opens it again." : null)) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var derby = found.Value!;
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Closed(at, request.At, member.Id));
            await posts.KeepAsync(session, derby, request);
            var sheet = await boards.SheetAsync(session, derby, request);
            var (waiting, until, words) = (sheet.Waiting, sheet.ProtestsUntil, new DerbyWords(derby, knowledge));
            return new Reply
            {
                Headline = $"{derby.Name} is closed",
                Lines =
                [
                    .. waiting > 0 ? (string[])[$"{Counted.Of(waiting, "entry still waits and does", "entries still wait and do")} not count: /derby rulings."] : [],
                    .. until > request.At ? (string[])[$"Protests are heard until {words.Time(until, request.At)}."] : [],
                    "/derby results gives them with a file.",
                ],
                Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Waiting.Of(waiting)],

                // Where it has a place of its own, the crew reads it there.
                Audience = derby.Place is null ? Audience.Crew : default,
            };
        }, cancellationToken);
}
