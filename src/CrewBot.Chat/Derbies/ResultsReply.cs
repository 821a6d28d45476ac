using CrewBot.Chat.Commands;
using CrewBot.Chat.Quantities;
using CrewBot.Core.Knowledge;

namespace CrewBot.Chat.Derbies;

/// <summary>The results as a message.</summary>
internal static class ResultsReply
{
    private const int MostLines = 6;

    public static Reply Of(DerbySheet sheet, TradeKnowledge knowledge, DateTimeOffset now)
    {
        var (derby, standings, words) = (sheet.Derby, sheet.Standings, new DerbyWords(sheet.Derby, knowledge));
        var state = StewardDesk.IsFinal(derby, now) ? "final"
            : derby.IsClosed ? $"closed, protests until {words.Time(sheet.ProtestsUntil, now)}"
            : "so far: not closed yet";
        return new Reply
        {
            Headline = $"Results of {derby.Name}, {state}",
            Lines =
            [
                .. standings.Lines.Count == 0 ? (string[])["No fish counted."] : [],
                .. standings.Lines.Take(MostLines).Select(line => words.Line(line, sheet)),
                $"{Counted.Of(sheet.Board.Anglers.Count(), "angler")}, {Counted.Of(sheet.Board.Entries.Count, "entry", "entries")}, {sheet.Board.Entries.Count - standings.Out.Count} of them count.",
            ],
            Reasons =
            [
                .. new DerbyRules(derby, knowledge).Lines(now).Take(6),
                .. words.Further(sheet, MostLines),
            ],
            Figures =
            [
                DerbyFigures.Number.Of(derby.Number),
                DerbyFigures.Fish.Of(sheet.Board.Entries.Count - standings.Out.Count),
                .. standings.Lines.Take(MostLines).Select((line, at) => DerbyFigures.Total.Of((double)line.Tally.Total, $"line{at + 1}.")),
            ],
            Files = [ResultsCsv.Write(sheet, knowledge)],
            Audience = Audience.Crew,
        };
    }
}
