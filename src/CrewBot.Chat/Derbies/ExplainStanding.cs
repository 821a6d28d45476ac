using CrewBot.Chat.Commands;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>Answers <c>/derby why</c>: why somebody stands where they stand.</summary>
public sealed class ExplainStanding(DerbyOptions options, TradeKnowledge knowledge, DerbyQuestion question) : ICommandHandler
{
    private const int MostFish = 3;

    public CommandInfo Info { get; } = new(
        "derby why", "Why you, or somebody, stand where you stand", "/derby why person:Ana", [options.Person, options.Derby]);

    public Task<Reply> HandleAsync(Request request, CancellationToken cancellationToken) =>
        question.AboutAsync(request, (sheet, angler) => Of(sheet, angler, request.At), cancellationToken);

    private Reply Of(DerbySheet sheet, long angler, DateTimeOffset now)
    {
        var words = new DerbyWords(sheet.Derby, knowledge);
        var who = sheet.CompetitorOf(angler)!;
        var name = sheet.NameOf(who);
        var gone = sheet.Standings.Out.Where(one => one.Entry.Angler == angler).Select(one => $"Does not count: {words.Entry(one.Entry, sheet)}: {words.Why(one)}.");
        if (sheet.Standings.Find(who) is not { } line)
        {
            return new Reply { Headline = $"{name} has no fish that counts yet in {sheet.Derby.Name}", Lines = [.. gone.Take(8)], Figures = [DerbyFigures.Number.Of(sheet.Derby.Number)] };
        }

        var used = line.Tally.Used;
        return new Reply
        {
            Headline = $"{name} is {DerbyWords.Place(line).TrimEnd('.')} of {sheet.Standings.Lines.Count} in {sheet.Derby.Name} with {words.Total(line.Tally.Total)}",
            Lines =
            [
                .. used.Take(MostFish).Select(fish => Counted(fish, words, now)),
                .. used.Count > MostFish ? (string[])[$"And {used.Count - MostFish} more."] : [],
                .. line.Tally.Spare.Count > 0 ? (string[])[$"{line.Tally.Spare.Count} more not needed: {string.Join(", ", line.Tally.Spare.Take(MostFish).Select(words.Fish))}."] : [],
                Parted(sheet, line, words, now),
                .. gone.Take(2),
            ],
            Reasons = [.. new DerbyRules(sheet.Derby, knowledge).Lines(now).Take(6), .. gone.Skip(2)],
            Figures =
            [
                DerbyFigures.Number.Of(sheet.Derby.Number), DerbyFigures.Rank.Of((double)line.Rank), DerbyFigures.Total.Of((double)line.Tally.Total),
            ],
            Actions = [DerbyActions.Standings(sheet.Derby)],
        };
    }

    private static string Counted(ScoredFish fish, DerbyWords words, DateTimeOffset now)
    {
        var measured = fish.Entry.Measured.Nanometres == fish.Scored.Nanometres ? "" : $", measured {words.Length(fish.Entry.Measured)}";
        var penalty = fish.Entry.Penalty > 0 ? $", less a penalty ({fish.Entry.Reason})" : "";
        return $"{words.Total(fish.Value)}: {words.Fish(fish)}{measured}{penalty}, caught {words.Time(fish.Entry.CaughtAt, now)} (entry {fish.Entry.Number}).";
    }

    private static string Parted(DerbySheet sheet, Standing line, DerbyWords words, DateTimeOffset now)
    {
        var level = sheet.Standings.Lines.Where(other => other.Rank == line.Rank && other != line).Select(other => sheet.NameOf(other.Tally.Who)).ToList();
        var shared = level.Count > 0 ? $"Level with {string.Join(", ", level)}. " : "";
        if (sheet.Standings.Above(line.Tally.Who) is not { } above)
        {
            return $"{shared}Nobody is better.";
        }

        var better = sheet.NameOf(above.Tally.Who);
        if (above.Tally.Total != line.Tally.Total)
        {
            return $"{shared}{better} is ahead by {words.Total(above.Tally.Total - line.Tally.Total)}.";
        }

        var first = sheet.Standings.Lines.First(other => other.Rank == line.Rank);
        return first.PartedBy switch
        {
            TieBreak.Earliest => $"{shared}{better} has the same total and reached it first: {words.Time(above.Tally.ReachedAt, now)} against {words.Time(line.Tally.ReachedAt, now)}.",
            { } tie => $"{shared}{better} has the same total; {DerbyWords.Tie(tie)} parts you.",
            null => $"{shared}{better} has the same total.",
        };
    }
}
