using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

<<<<<<< HEAD
/// <summary>Answers <c>/catch best</c>: the longest of each species, one's own or another angler's.</summary>
=======
/// <summary>Answers <c>/catch best</c>: an angler's longest of each species.</summary>
>>>>>>> main
public sealed class BestCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int MostShown = 8;

    public CommandInfo Info { get; } = new(
<<<<<<< HEAD
        "catch best", "Your longest of each species", "/catch best species:walleye", [options.OtherSpecies, options.Angler])
=======
        "catch best", "The longest of each species, yours or another angler's", "/catch best species:walleye",
        [options.OtherSpecies, options.Angler])
>>>>>>> main
    {
        OnPerson = new("Best fish", options.Angler),
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
<<<<<<< HEAD
        var who = request.TryGet(options.Angler, out var other) ? other.Id : request.Caller.Member;
        var best = await book.ReadAsync(
            request,
            async session => await new MemberRepository(session).FindAsync(who) is { } member
                ? await new CatchRepository(session).LongestOfEachAsync(member.Id)
                : [],
            cancellationToken);
=======
        var (who, best) = await book.ReadAsync(request, session => BestAsync(request, session), cancellationToken);
        if (who is null && request.TryGet(options.Angler, out var angler))
        {
            return Reply.Refuse($"{Quoting.Quote(angler.Id)} has logged nothing in this crew.");
        }

>>>>>>> main
        var shown = request.TryGet(options.OtherSpecies, out var species)
            ? [.. best.Where(logged => logged.Entry.Species == species.Key)]
            : best;
        var whose = request.Has(options.Angler) ? $"{who} has" : "You have";
        var what = species is null ? "fish" : species.Name;
        return shown.Count == 0
<<<<<<< HEAD
            ? Reply.Refuse(who == request.Caller.Member
                ? "You have no measured fish in the log yet: log one with its length."
                : "They have no measured fish in the log yet.")
            : new Reply
            {
                Headline = $"Longest of each species by {shown[0].Angler}",
=======
            ? Reply.Refuse($"{whose} no measured {what} in the log yet: log one with its length.")
            : new Reply
            {
                Headline = $"Longest of each species by {who}",
>>>>>>> main
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
