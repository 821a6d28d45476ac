using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch best</c>: one's own longest of each species.</summary>
public sealed class BestCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int MostShown = 8;

    public CommandInfo Info { get; } = new(
        "catch best", "Your longest of each species", "/catch best species:walleye", [options.OtherSpecies]);

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var best = await book.ReadAsync(
            request,
            async session => await new MemberRepository(session).FindAsync(request.Caller.Member) is { } member
                ? await new CatchRepository(session).LongestOfEachAsync(member.Id)
                : [],
            cancellationToken);
        var shown = request.TryGet(options.OtherSpecies, out var species)
            ? [.. best.Where(logged => logged.Entry.Species == species.Key)]
            : best;
        return shown.Count == 0
            ? Reply.Refuse("You have no measured fish in the log yet: log one with its length.")
            : new Reply
            {
                Headline = $"Longest of each species by {request.Caller.Name}",
                Lines = [.. shown.Take(MostShown).Select(logged => CatchWords.Row(logged, knowledge, request))],
                Figures = [CatchFigures.Count.Of(shown.Count)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }
}
