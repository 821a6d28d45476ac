using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch best</c>: the longest of each species, one's own or another angler's.</summary>
public sealed class BestCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int MostShown = 8;

    public CommandInfo Info { get; } = new(
        "catch best", "Your longest of each species", "/catch best species:walleye", [options.OtherSpecies, options.Angler])
    {
        OnPerson = new("Best fish", options.Angler),
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var who = request.TryGet(options.Angler, out var other) ? other.Id : request.Caller.Member;
        var best = await book.ReadAsync(
            request,
            async session => await new MemberRepository(session).FindAsync(who) is { } member
                ? await new CatchRepository(session).LongestOfEachAsync(member.Id)
                : [],
            cancellationToken);
        var shown = request.TryGet(options.OtherSpecies, out var species)
            ? [.. best.Where(logged => logged.Entry.Species == species.Key)]
            : best;
        return shown.Count == 0
            ? Reply.Refuse(who == request.Caller.Member
                ? "You have no measured fish in the log yet: log one with its length."
                : "They have no measured fish in the log yet.")
            : new Reply
            {
                Headline = $"Longest of each species by {shown[0].Angler}",
                Lines = [.. shown.Take(MostShown).Select(logged => CatchWords.Row(logged, knowledge, request))],
                Figures = [CatchFigures.Count.Of(shown.Count)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }
}
