using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby angler</c>: one person's entries and what became of them.</summary>
public sealed class ShowAngler(DerbyOptions options, TradeKnowledge knowledge, DerbyQuestion question) : ICommandHandler
{
    private const int MostShown = 7;

    public CommandInfo Info { get; } = new(
        "derby angler", "One person's entries in the derby", "/derby angler person:Ana", [options.Person, options.Derby]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        question.AboutAsync(request, (sheet, angler) => Of(sheet, angler, request.At), cancellationToken);

    private Reply Of(DerbySheet sheet, long angler, DateTimeOffset now)
    {
        var words = new DerbyWords(sheet.Derby, knowledge);
        var entries = sheet.Board.Entries.Values.Where(entry => entry.Angler == angler).OrderByDescending(entry => entry.Number).ToList();
        var gone = sheet.Standings.Out.ToDictionary(one => one.Entry.Number);
        var line = sheet.CompetitorOf(angler) is { } who ? sheet.Standings.Find(who) : null;
        string Row(EntryState entry)
        {
            var scored = sheet.Settings.Grid.Score(entry.Measured, entry.Penalty);
            var penalty = entry.Penalty > 0 ? $", penalty taken off ({entry.Reason})" : "";
            var late = entry.ReceivedAt > sheet.Settings.Window.Ends ? ", sent late" : "";
            var state = gone.TryGetValue(entry.Number, out var reason) ? $"does not count: {words.Why(reason)}" : "counts";
            return $"{entry.Number}. {words.SpeciesOf(entry)} {words.Length(scored)}, caught {words.Time(entry.CaughtAt, now)}{late}{penalty}: {state}.";
        }

        return new Reply
        {
            Headline = $"{sheet.Names[angler]} in {sheet.Derby.Name}: {(line is null ? "no fish that counts yet" : $"{DerbyWords.Place(line)} {words.Total(line.Tally.Total)}")}",
            Lines = entries.Count == 0 ? ["Nothing entered yet."] : [.. entries.Take(MostShown).Select(Row)],
            Reasons = [.. entries.Skip(MostShown).Select(Row)],
            Figures =
            [
                DerbyFigures.Number.Of(sheet.Derby.Number),
                .. line is null ? (Figure[])[] : [DerbyFigures.Rank.Of((double)line.Rank), DerbyFigures.Total.Of((double)line.Tally.Total)],
            ],
            Actions = [DerbyActions.Standings(sheet.Derby)],
        };
    }
}
