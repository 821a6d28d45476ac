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
    private const int NearestShown = 3;

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
        var found = await book.ReadAsync(request, session => BestAsync(request, session), cancellationToken);
        if (found.Fault is { } fault)
        {
            return Reply.Refuse(fault);
        }

        var (who, best) = found.Value;

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

    private async Task<Reading<(string Who, IReadOnlyList<LoggedCatch> Best)>> BestAsync(Request request, CrewSession session)
    {
        var members = new MemberRepository(session);
        if (!request.TryGet(options.Angler, out var angler))
        {
            return await members.FindAsync(request.Caller.Member) is { } own ? await OfAsync(own, session) : (request.Caller.Name, []);
        }

        var crew = await members.AllAsync();
        return PersonMeant.Fitting(angler.Id, crew) switch
        {
            [var only] => await OfAsync(only, session),
            [_, ..] several => new Misread(PersonMeant.Which(options.Angler, angler.Id, several)),
            _ => new Misread($"{Quoting.Quote(angler.Id)} has logged nothing in this crew. {Nearest.Offer(angler.Id, crew.Select(member => member.Name), NearestShown, "")}".TrimEnd()),
        };
    }

    private static async Task<(string Who, IReadOnlyList<LoggedCatch> Best)> OfAsync(CrewMember member, CrewSession session) =>
        (member.Name, await new CatchRepository(session).LongestOfEachAsync(member.Id));
}
