using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch best</c>: an angler's longest of each species.</summary>
public sealed class BestCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int MostShown = 8;

    public CommandInfo Info { get; } = new(
        "catch best", "The longest of each species, yours or another angler's", "/catch best species:walleye",
        [options.OtherSpecies, options.Angler])
    {
        FromAnywhere = true,
        AlsoSaid = ["biggest", "my biggest", "my best", "personal best", "pb"],
        OnPerson = new("Best fish", options.Angler),
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var (who, best) = await book.ReadAsync(request, session => BestAsync(request, session), cancellationToken);
        if (who is null && request.TryGet(options.Angler, out var angler))
        {
            return Reply.Refuse($"{Quoting.Quote(angler.Id)} has logged nothing in this crew.");
        }

        var shown = request.TryGet(options.OtherSpecies, out var species)
            ? [.. best.Where(logged => logged.Entry.Species == species.Key)]
            : best;
        var whose = request.Has(options.Angler) ? $"{who} has" : "You have";
        var what = species is null ? "fish" : species.Name;
        return shown.Count == 0
            ? Reply.Refuse($"{whose} no measured {what} in the log yet: log one with its length.")
            : new Reply
            {
                Headline = $"Longest of each species by {who}",
                Lines = [.. shown.Take(MostShown).Select(logged => CatchWords.Row(logged, knowledge, request))],
                Figures = [CatchFigures.Count.Of(shown.Count)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    private async Task<(string? Who, IReadOnlyList<LoggedCatch> Best)> BestAsync(Request request, CrewSession session)
    {
        var members = new MemberRepository(session);
        var member = request.TryGet(options.Angler, out var angler)
            ? await members.FindAsync(angler.Id) ?? (await members.AllAsync()).FirstOrDefault(one => one.Name.Equals(angler.Id, StringComparison.OrdinalIgnoreCase))
            : await members.FindAsync(request.Caller.Member);
        return member is null ? (null, []) : (member.Name, await new CatchRepository(session).LongestOfEachAsync(member.Id));
    }
}
