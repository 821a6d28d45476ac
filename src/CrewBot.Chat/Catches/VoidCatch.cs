using CrewBot.Chat.Commands;
using CrewBot.Chat.Derbies.Unasked;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch void</c>: lets an entry no longer count.</summary>
public sealed class VoidCatch(CatchOptions options, TradeKnowledge knowledge, CrewBook book, DerbyPosts derbies) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch void", "Let an entry of yours no longer count; it stays in the history", "/catch void catch:41", [options.Number])
    {
        AlsoSaid =
        [
            "undo", "oops", "delete", "remove", "scratch that", "catch undo", "catch delete", "catch remove", "catch cancel",
            "log undo", "log delete",
        ],
        FromAnywhere = true,
        Writes = true,
    };

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        book.WriteOnceAsync(request, async (session, member) =>
        {
            var catches = new CatchRepository(session);
            var number = request.Get(options.Number);
            var entry = await catches.FindAsync(number);
            if (EntryRights.FaultOf(entry, number, member, request) is { } fault)
            {
                return Reply.Refuse(fault);
            }

            await catches.VoidAsync(entry!, member.Id, request.At);
            await derbies.CatchChangedAsync(session, number, request);
            return new Reply
            {
                Headline = $"No longer counts: {CatchWords.Row(entry!, knowledge, request)}",
                Figures = [CatchFigures.Number.Of(number)],
                Audience = Audience.Crew,
            };
        }, cancellationToken);
}
