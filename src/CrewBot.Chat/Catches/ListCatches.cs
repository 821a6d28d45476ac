using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch list</c>: the newest entries.</summary>
public sealed class ListCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int UsuallyShown = 7;

    public CommandInfo Info { get; } = new(
        "catch list", "The newest entries, the crew's or yours", "/catch list whose:mine", [options.Mine, options.Most])
    {
        AlsoSaid = ["my catches", "log list", "log show", "catch show", "catch mine"],
        FromAnywhere = true,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var mine = request.GetOr(options.Mine, otherwise: false);
        var newest = await book.ReadAsync(request, session => NewestAsync(request, session, mine), cancellationToken);
        return newest.Count == 0
            ? Reply.Refuse("Nothing is logged yet. Log a fish with /catch log species:walleye length:22.5in")
            : new Reply
            {
                Headline = mine ? $"What {request.Caller.Name} caught last" : "What the crew caught last",
                Lines = [.. newest.Select(logged => CatchWords.Row(logged, knowledge, request))],
                Figures = [CatchFigures.Count.Of(newest.Count)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    private async Task<IReadOnlyList<LoggedCatch>> NewestAsync(Request request, CrewSession session, bool mine)
    {
        var member = mine ? await new MemberRepository(session).FindAsync(request.Caller.Member) : null;
        return mine && member is null ? [] : await new CatchRepository(session).NewestAsync(member?.Id, request.GetOr(options.Most, UsuallyShown));
    }
}
