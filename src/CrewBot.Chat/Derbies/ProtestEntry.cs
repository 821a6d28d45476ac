using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby protest</c>: an entry is held until a steward has ruled.</summary>
public sealed class ProtestEntry(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "derby protest", "Protest against an entry; a steward rules", "/derby protest entry:4 reason:\"measured with the tail spread\"",
        [options.Entry, options.Reason, options.Derby])
    {
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => derby.HasJoined && DerbyFinder.HasBegun(derby, request.At));
            if (found.Fault is { } none)
            {
                return Reply.Refuse(none);
            }

            var (derby, number) = (found.Value!, request.Get(options.Entry));
            var (words, sheet) = (new DerbyWords(derby, knowledge), await boards.SheetAsync(session, derby, request));
            var until = sheet.ProtestsUntil;
            var entry = sheet.Board.Entries.GetValueOrDefault(number);
            var fault = request.At > until ? $"Protests in {derby.Name} were heard until {words.Time(until, request.At)}."
                : entry is null ? $"There is no entry {number} in {derby.Name}."
                : !derby.HasJoined ? $"Only who takes part in {derby.Name} may protest; tell a steward."
                : entry.Angler == member.Id ? $"Entry {number} is your own: /derby leave entry:{number} takes it back."
                : entry.IsDisputed ? $"Entry {number} is under protest already."
                : null;
            if (fault is not null)
            {
                return Reply.Refuse(fault);
            }

            var reason = request.Get(options.Reason);
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Disputed(at, request.At, member.Id, number, reason));
            await posts.KeepAsync(session, derby, request);
            return new Reply
            {
                Headline = $"Protest against {words.Entry(entry!, sheet)}",
                Lines = [$"{member.Name}: {reason}.", "It does not count until a steward has ruled with /derby rulings."],
                Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Entry.Of(number)],
                Actions = [DerbyActions.Accept(derby, number), DerbyActions.Refuse(derby, number, options)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
