using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch leaders</c>: the crew's boards, each with its rule.</summary>
public sealed class LeadCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int SpeciesShown = 4;

    private const string Rule =
        "Void entries are left out; lengths are compared to the nanometre; whoever is level shares the place, each with the earliest of their own. Relative weight is a scale's weight over the standard weight of the length.";

    public CommandInfo Info { get; } = new(
        "catch leaders", "The crew's boards for a season, month, day or trip, or for a water", "/catch leaders span:month",
        [options.BoardSpan, options.Water, options.Trip])
    {
        AlsoSaid =
        [
            "leaderboard", "leader board", "who's winning", "whos winning", "who is winning", "catch leaderboard", "catch board",
            "catch scores",
        ],
        FromAnywhere = true,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var period = request.GetOr(options.BoardSpan, request.Has(options.Trip) ? Period.Trip : Period.Season);
        if (period != Period.Trip && request.TryGet(options.Trip, out var number))
        {
            return Reply.Refuse($"trip:{number} goes with span:trip: leave one of them out.");
        }

        var (span, board) = await book.ReadAsync(request, session => ReadAsync(session, request, period), cancellationToken);
        return span.Fault is { } fault ? Reply.Refuse(fault)
            : board!.Fish == 0 ? Reply.Refuse($"No fish in the log for {Article(period)}{span.Value!.Words}.")
            : new Reply
            {
                Headline = $"Leaders, {Article(period)}{span.Value!.Words}: {board.Fish} fish",
                Lines = [.. board.Longest.Take(SpeciesShown), board.MostSpecies, .. board.BestTotal, .. board.BestCondition],
                Figures = [CatchFigures.Count.Of(board.Fish)],
                Reasons = [Rule, .. board.Longest.Skip(SpeciesShown)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    private async Task<(Reading<BoardSpan> Span, Boards? Board)> ReadAsync(CrewSession session, Request request, Period period)
    {
        var span = await BoardSpan.FindAsync(session, request, options, period);
        return (span, span.Fault is null ? await BoardsAsync(session, request, period, span.Value!) : null);
    }

    // Tallies are kept by season; everything else is counted from its fish.
    private async Task<Boards> BoardsAsync(CrewSession session, Request request, Period period, BoardSpan span)
    {
        var repository = new TallyRepository(session);
        var tallies = (period, span.WaterId) switch
        {
            (Period.All, null) => await repository.OfSeasonAsync(null),
            (Period.Season, null) => await repository.OfSeasonAsync(Season.Of(span.From)),
            _ => await repository.BetweenAsync(span.From, span.Until, span.WaterId),
        };
        return new Boards(tallies, await repository.WeighedAsync(span.From, span.Until, span.WaterId), knowledge, request.Units);
    }

    private static string Article(Period period) => period switch
    {
        Period.Trip => "",
        Period.All or Period.Day => "the ",
        _ => "this ",
    };
}
