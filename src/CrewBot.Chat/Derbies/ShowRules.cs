using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby rules</c>.</summary>
public sealed class ShowRules(DerbyOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby rules", "The rules of the derby in plain words", "/derby rules", [options.Derby]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => book.ReadAsync(request, async session =>
    {
        var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
        var found = await DerbyFinder.FindAsync(request, options, session, member?.Id);
        return found.Fault is { } fault ? Reply.Refuse(fault) : new Reply
        {
            Headline = $"The rules of derby {found.Value!.Number}, {found.Value.Name}{(found.Value.IsClosed ? " (closed)" : "")}",
            Lines = new DerbyRules(found.Value, knowledge).Lines(request.At),
            Figures = [DerbyFigures.Number.Of(found.Value.Number)],
            Actions = found.Value is { HasJoined: false, IsClosed: false } ? [DerbyActions.Join(found.Value)] : [DerbyActions.Standings(found.Value)],
        };
    }, cancellationToken);
}
