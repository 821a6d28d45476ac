using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby results</c>: the standings as they are to be read out, and the whole derby as a file.</summary>
public sealed class ShowResults(DerbyOptions options, TradeKnowledge knowledge, CrewBook book, DerbyBoards boards) : ICommandHandler
{
    public CommandInfo Info { get; } = new("derby results", "The results, with every entry in a file", "/derby results", [options.Derby]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) => book.ReadAsync(request, async session =>
    {
        var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
        var found = await DerbyFinder.FindAsync(request, options, session, member?.Id);
        if (found.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var sheet = await boards.SheetAsync(session, found.Value!, request);
        return ResultsReply.Of(sheet, knowledge, request.At);
    }, cancellationToken);
}
