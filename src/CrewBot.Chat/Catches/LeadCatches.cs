using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Catches;

/// <summary>Answers <c>/catch leaders</c>: the crew's boards, each with its rule.</summary>
public sealed class LeadCatches(CatchOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    private const int SpeciesShown = 4;

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
        return caught.Count == 0
            ? Reply.Refuse($"No fish in the log for this {Word(period)}{where}.")
            : new Reply
            {
                Headline = $"Leaders, {Word(period)}{where}: {caught.Count} fish",
                Lines =
                [
                    .. Longest(caught, request),
                    Board("Most species (different species, void entries left out)", caught.GroupBy(Angler), own => own.Select(fish => fish.Entry.Species).Distinct().Count(), "0"),
                    Board("Best total (sum of measured lengths, cm)", caught.GroupBy(Angler), own => own.Sum(fish => (fish.Entry.Length?.Nanometres ?? 0) / 1e7), "0.0"),
                    .. Condition(caught),
                ],
                Figures = [CatchFigures.Count.Of(caught.Count)],
                Reasons = ["Longest: by length to the nanometre; equal lengths share the place. Condition: weight on a scale over the standard weight of the length."],
                Actions = ReplyAction.WhyAndShare(request),
            };
    }

    private static (long Id, string Name) Angler(LoggedCatch logged) => (logged.Entry.MemberId, logged.Angler);

    private static string Word(Period period) => period == Period.All ? "whole log" : period.ToString().ToLowerInvariant();

    private IEnumerable<string> Longest(IReadOnlyList<LoggedCatch> caught, Request request) => caught
        .Where(logged => logged.Entry.Length is not null)
        .GroupBy(logged => logged.Entry.Species)
        .OrderByDescending(group => group.Count())
        .ThenBy(group => group.Key, StringComparer.Ordinal)
        .Take(SpeciesShown)
        .Select(group =>
        {
            var longest = group.Max(logged => logged.Entry.Length!.Value.Nanometres);
            var first = group.Where(logged => logged.Entry.Length!.Value.Nanometres == longest).ToList();
            var who = string.Join(" and ", first.Select(logged => $"{logged.Angler} (#{logged.Number})"));
            return $"Longest {CatchWords.NameOf(group.Key, knowledge)}: {CatchWords.Length(first[0].Entry.Length!.Value, request.Units)}, {who}.";
        });

    private static string Board(
        string rule, IEnumerable<IGrouping<(long Id, string Name), LoggedCatch>> anglers, Func<IEnumerable<LoggedCatch>, double> score, string format)
    {
        var scores = anglers.Select(own => (own.Key.Name, Score: score(own))).ToList();
        var top = scores.Max(pair => pair.Score);
        var first = scores.Where(pair => pair.Score == top).Select(pair => pair.Name).Order(StringComparer.Ordinal);
        return $"{rule}: {top.ToString(format, System.Globalization.CultureInfo.InvariantCulture)}, {string.Join(" and ", first)}.";
    }

    private IEnumerable<string> Condition(IReadOnlyList<LoggedCatch> caught)
    {
        var fattest = caught
            .Where(logged => logged.Entry is { Length: not null, Weight: not null } && knowledge.Species.Has(logged.Entry.Species))
            .Select(logged => (logged, Relative: RelativeWeight.Of(
                knowledge.Species[logged.Entry.Species], logged.Entry.Length!.Value.Length, logged.Entry.Weight!.Value.Mass)))
            .Where(pair => pair.Relative is not null)
            .OrderByDescending(pair => pair.Relative!.Share.Percent)
            .FirstOrDefault();
        if (fattest.Relative is { } best)
        {
            yield return $"In best condition (relative weight of weighed fish): {CatchWords.NameOf(fattest.logged.Entry.Species, knowledge)} at {best.Share.Percent:0} %, {fattest.logged.Angler} (#{fattest.logged.Number}).";
        }
    }
}
