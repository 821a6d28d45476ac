using CrewBot.Chat.Commands;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Derbies;

/// <summary>A question about one person in one derby: finds both, or says in a line what is missing.</summary>
public sealed class DerbyQuestion(DerbyOptions options, CrewBook book, DerbyBoards boards)
{
    /// <summary>Finds the derby and the person that a request names, or means, and answers about them.</summary>
    internal Task<Reply> AboutAsync(Request request, Func<DerbySheet, long, Reply> answer, CancellationToken cancellationToken) =>
        book.ReadAsync(request, async session =>
        {
            var member = await new MemberRepository(session).FindAsync(request.Caller.Member);
            var found = await DerbyFinder.FindAsync(request, options, session, member?.Id);
            if (found.Fault is { } fault)
            {
                return Reply.Refuse(fault);
            }

            var sheet = await boards.SheetAsync(session, found.Value!, request);
            var person = await DerbyPeople.FindAsync(request, options, session, sheet);
            return person.Fault is { } nobody ? Reply.Refuse(nobody) : answer(sheet, person.Value);
        }, cancellationToken);
}
