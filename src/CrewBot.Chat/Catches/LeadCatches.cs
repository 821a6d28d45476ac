using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch leaders</c>: the crew's boards, each with its rule.</summary>
public sealed class LeadCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int SpeciesShown = 4;

    private const string Rule =
        "Void entries are left out; lengths are compared to the nanometre; whoever is level shares the place. Relative weight is a scale's weight over the standard weight of the length.";

    public CommandInfo Info { get; } = new(
        "catch leaders", "The crew's boards for a season, month or day, or for a water", "/catch leaders span:month",
        [options.Span, options.Water]);

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var period = request.GetOr(options.Span, Period.Season);
        var from = PeriodReader.StartOf(period, request.At, request.Caller.Zone);
        var water = request.GetOr(options.Water, null!);
        var caught = await book.ReadAsync(
            request,
            async session => await new CatchRepository(session).BetweenAsync(
                from, request.At, water is null ? null : await new WaterRepository(session).FindAsync(water.Name) ?? 0),
            cancellationToken);
        var where = water is null ? "" : $" on {water.Name}";
        if (caught.Count == 0)
        {
            return Reply.Refuse($"No fish in the log for this {Word(period)}{where}.");
        }

        var boards = new Boards(caught, knowledge, request.Units);
        return new Reply
        {
            Headline = $"Leaders, {Word(period)}{where}: {caught.Count} fish",
            Lines = [.. boards.Longest.Take(SpeciesShown), boards.MostSpecies, .. boards.BestTotal, .. boards.BestCondition],
            Figures = [CatchFigures.Count.Of(caught.Count)],
            Reasons = [Rule, .. boards.Longest.Skip(SpeciesShown)],
            Actions = ReplyAction.WhyAndShare(request),
        };
    }

    private static string Word(Period period) => period == Period.All ? "whole log" : period.ToString().ToLowerInvariant();
}
