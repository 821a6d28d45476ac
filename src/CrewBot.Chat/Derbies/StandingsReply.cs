using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>The standings as a message.</summary>
internal static class StandingsReply
{
    private const int MostLines = 6;

    /// <param name="sheet">The derby.</param>
    /// <param name="knowledge">What the trade knows.</param>
    /// <param name="now">When it is told.</param>
    /// <param name="member">Whose own line is shown wherever they stand; null for nobody's.</param>
    public static Reply Of(DerbySheet sheet, TradeKnowledge knowledge, DateTimeOffset now, long? member)
    {
        var (derby, standings, words) = (sheet.Derby, sheet.Standings, new DerbyWords(sheet.Derby, knowledge));
        var own = member is { } id && sheet.CompetitorOf(id) is { } who ? standings.Find(who) : null;
        var shown = standings.Lines.Take(MostLines).ToList();
        var waiting = sheet.Waiting;
        return new Reply
        {
            Headline = $"{derby.Name}: {State(sheet, words, now)}",
            Lines =
            [
                .. standings.Lines.Count == 0 ? (string[])["No fish counts yet."] : [],
                .. shown.Select(line => words.Line(line, sheet)),
                .. own is not null && !shown.Contains(own) ? (string[])[$"You: {words.Line(own, sheet)}"] : [],
                .. waiting > 0 ? (string[])[$"{Counted.Of(waiting, "entry waits", "entries wait")} for a word or a ruling."] : [],
            ],
            Reasons =
            [
                .. new DerbyRules(derby, knowledge).Lines(now).Take(6),
                .. words.Further(sheet, MostLines),
            ],
            Figures =
            [
                DerbyFigures.Number.Of(derby.Number),
                DerbyFigures.Fish.Of(standings.Lines.Sum(line => line.Tally.Used.Count + line.Tally.Spare.Count)),
                DerbyFigures.Waiting.Of(waiting),
                .. standings.Lines.Take(MostLines).Select((line, at) => DerbyFigures.Total.Of((double)line.Tally.Total, $"line{at + 1}.")),
            ],
            Actions = [DerbyActions.Why(derby), .. derby.IsClosed ? (ReplyAction[])[] : [DerbyActions.Join(derby)]],
        };
    }

    private static string State(DerbySheet sheet, DerbyWords words, DateTimeOffset now)
    {
        var window = sheet.Settings.Window;
        return sheet.Derby.IsClosed ? "closed"
            : now < window.Starts ? $"starts {words.Time(window.Starts, now)}"
            : now <= window.Ends ? $"on until {words.Time(window.Ends, now)}, {Counted.Of(sheet.Board.Anglers.Count(), "angler")}"
            : now <= window.LastWord ? $"fished; word of fish until {words.Time(window.LastWord, now)}"
            : "fished, not closed yet";
    }
}
