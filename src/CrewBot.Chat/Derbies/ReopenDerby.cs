using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Derbies.Ledger;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby reopen</c>.</summary>
public sealed class ReopenDerby(DerbyOptions options, CrewBook book, DerbyPosts posts) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby reopen", "Open a closed derby again", "/derby reopen derby:\"Basin day\"", [options.Derby])
    {
        Writes = true,
        Role = Role.Steward,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var found = await DerbyFinder.FindOnlyAsync(request, options, session, member.Id, derby => derby.IsClosed);
            if ((found.Fault ?? (found.Value!.IsClosed ? null : $"{found.Value.Name} is open already. /derby close closes it.")) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var derby = found.Value!;
            await new LedgerRepository(session).AppendAsync(derby.Number, at => new Reopened(at, request.At, member.Id));
            await posts.KeepAsync(session, derby, request);
            return new Reply
            {
                Headline = $"{derby.Name} is open again",
                Lines = [$"By {member.Name}; it is on the record. The window stays as it was."],
                Figures = [DerbyFigures.Number.Of(derby.Number)],
                Actions = [DerbyActions.Standings(derby)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
