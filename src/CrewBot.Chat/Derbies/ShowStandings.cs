using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby standings</c>.</summary>
public sealed class ShowStandings(DerbyOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby standings", "Who stands where in the derby", "/derby standings", [options.Derby]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => book.ReadAsync(request, async session =>
    {
        var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
        var found = await DerbyFinder.FindAsync(request, options, session, member?.Id);
        return found.Fault is { } fault
            ? Reply.Refuse(fault)
            : StandingsReply.Of(await DerbySheet.ReadAsync(session, found.Value!, knowledge), knowledge, request.At, member?.Id);
    }, cancellationToken);
}
