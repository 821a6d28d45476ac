using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Connections;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch leaders</c>: the crew's boards, each with its rule.</summary>
public sealed class LeadCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int SpeciesShown = 4;

    private const string Rule =
        "Void entries are left out; lengths are compared to the nanometre; whoever is level shares the place, each with the earliest of their own. Relative weight is a scale's weight over the standard weight of the length.";

    public CommandInfo Info { get; } = new(
        "catch leaders", "The crew's boards for a season, month or day, or for a water", "/catch leaders span:month",
        [options.Span, options.Water])
    {
        FromAnywhere = true,
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var period = request.GetOr(options.Span, Period.Season);
        var from = PeriodReader.StartOf(period, request.At, request.Caller.Zone);
        var water = request.GetOr(options.Water, null!);
        var board = await book.ReadAsync(
            request,
            async session => await BoardsAsync(
                session, request, period, from, water is null ? null : await new WaterRepository(session).FindAsync(water.Name) ?? 0),
            cancellationToken);
        var longest = board.Longest.ToList();
        var where = water is null ? "" : $" on {water.Name}";
        return board.Fish == 0
            ? Reply.Refuse($"No fish in the log for this {Word(period)}{where}.")
            : new Reply
            {
                Headline = $"Leaders, {Word(period)}{where}: {board.Fish} fish",
                Lines = [.. longest.Take(SpeciesShown), board.MostSpecies, .. board.BestTotal, .. board.BestCondition],
                Figures = [CatchFigures.Count.Of(board.Fish)],
                Reasons = [Rule, .. longest.Skip(SpeciesShown)],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    // Tallies are kept by season; a month, a day or a water is counted from its fish.
    private async Task<Boards> BoardsAsync(CrewSession session, Request request, Period period, DateTimeOffset from, long? water)
    {
        var repository = new TallyRepository(session);
        var tallies = (period, water) switch
        {
            (Period.All, null) => await repository.OfSeasonAsync(null),
            (Period.Season, null) => await repository.OfSeasonAsync(Season.Of(from)),
            _ => await repository.BetweenAsync(from, request.At, water),
        };
        return new Boards(tallies, await repository.WeighedAsync(from, request.At, water), knowledge, request.Units);
    }

    private static string Word(Period period) => period == Period.All ? "whole log" : period.ToString().ToLowerInvariant();
}
