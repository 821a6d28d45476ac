using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby leave</c>: takes oneself out, or one entry of one's own.</summary>
public sealed class LeaveDerby(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "derby leave", "Take yourself out of the derby, or one entry of yours", "/derby leave entry:4", [options.OneEntry, options.Derby])
    {
        AlsoSaid = ["derby delete", "derby remove", "derby undo", "derby quit", "derby withdraw"],
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, (session, member) => LeaveAsync(request, session, member), cancellationToken);

    private async Task<Reply> LeaveAsync(Request request, CrewSession session, CrewMember member)
    {
        var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => derby is { HasJoined: true, IsClosed: false });
        if ((found.Fault ?? (found.Value!.IsClosed ? $"{found.Value.Name} is closed: its results stay as they are." : null)) is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var derby = found.Value!;
        if (!derby.HasJoined)
        {
            return Reply.Refuse($"You are not in {derby.Name}.");
        }

        return request.TryGet(options.OneEntry, out var entry)
            ? await TakeBackAsync(request, session, member, derby, entry)
            : await GoAsync(request, session, member, derby);
    }

    private async Task<Reply> GoAsync(Request request, CrewSession session, CrewMember member, Derby derby)
    {
        await new LedgerRepository(session).AppendAsync(derby.Number, at => new Left(at, request.At, member.Id, member.Id));
        await posts.KeepAsync(session, derby, request);
        return new Reply
        {
            Headline = $"{member.Name} has left {derby.Name}",
            Lines = ["Their fish no longer count; /derby join brings them back."],
            Figures = [DerbyFigures.Number.Of(derby.Number)],
            Audience = Audience.Crew,
        };
    }

    private async Task<Reply> TakeBackAsync(Request request, CrewSession session, CrewMember member, Derby derby, int number)
    {
        var sheet = await boards.SheetAsync(session, derby, request);
        if (!sheet.Board.Entries.TryGetValue(number, out var entry) || entry.Angler != member.Id)
        {
            return Reply.Refuse($"Entry {number} is not yours. /derby angler lists your entries.");
        }

        if (entry.IsWithdrawn)
        {
            return Reply.Refuse($"Entry {number} is taken back already.");
        }

        await new LedgerRepository(session).AppendAsync(derby.Number, at => new Withdrawn(at, request.At, member.Id, number));
        await posts.KeepAsync(session, derby, request);
        return new Reply
        {
            Headline = $"Taken back: {new DerbyWords(derby, knowledge).Entry(entry, sheet)}",
            Lines = ["It stays in your log and on the derby's record."],
            Figures = [DerbyFigures.Number.Of(derby.Number), DerbyFigures.Entry.Of(number)],
            Audience = Audience.Crew,
        };
    }
}
