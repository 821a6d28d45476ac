using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Effort;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Crews;

namespace CrewBot.Chat.Learning;

/// <summary>Answers <c>/catch learn</c>: what worked, by the crew's own fish and line-hours.</summary>
public sealed class LearnCatches(LearnOptions options, TradeKnowledge knowledge, CrewBook book) : ICommandHandler
{
    public CommandInfo Info { get; } = new(
        "catch learn", "What worked for this crew: fish per line-hour, how sure it is, and what to try next",
        "/catch learn species:walleye by:presentation span:season", options.All)
    {
        FromAnywhere = true,
        AlsoSaid = ["what worked", "what's working", "whats working"],
    };

    public async Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken)
    {
        var period = request.GetOr(options.Span, Period.Season);
        var from = PeriodReader.StartOf(period, request.At, request.Caller.Zone);
        var water = request.GetOr(options.Water, null!);
        var by = request.GetOr(options.By, [EffortDimension.Presentation]).Distinct().ToList();
        var named = request.GetOr(options.Species, null!);
        var record = await book.ReadAsync(
            request,
            async session => await FishingRecord.ReadAsync(
                session, from, request.At, water is null ? null : await new WaterRepository(session).FindAsync(water.Name) ?? 0,
                by.Contains(EffortDimension.Species) ? null : named?.Key),
            cancellationToken);
        Mood? mood = request.TryGet(options.Mood, out var said) ? said : null;
        var species = named ?? record.Log.Species.Where(knowledge.Species.Has).Select(key => knowledge.Species[key]).FirstOrDefault();
        return species is null
            ? Reply.Refuse($"No fish in counted line-hours for {Words(period, water)}. /lines down and /lines up count them; fish logged in between make the rates.{(period == Period.All ? "" : " span:all looks at the whole log.")}")
            : new LearnAnswer(request, knowledge, record, species, by, mood, Words(period, water), !request.Has(options.Species)).Give();
    }

    private static string Words(Period period, WaterRules? water) =>
        period switch { Period.All => "the whole log", Period.Day => "the last 24 hours", _ => $"this {period.ToString().ToLowerInvariant()}" } + (water is null ? "" : $" on {water.Name}");
}
