using System.Globalization;
using CrewBot.Chat.CatchFiles;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Tables;
using CrewBot.Core.Derbies;
using CrewBot.Core.Knowledge;
using CsvHelper;

namespace CrewBot.Chat.Derbies;

/// <summary>Every entry of a derby with what became of it, as comma-separated values (RFC 4180), in UTF-8.</summary>
internal static class ResultsCsv
{
    private static readonly string[] Columns =
    [
        "place", "angler", "team", "entry", "species", "measured", "scored", "caught", "received", "counts", "why", "penalty", "reason",
    ];

    public static ReplyFile Write(DerbySheet sheet, TradeKnowledge knowledge)
    {
        var words = new DerbyWords(sheet.Derby, knowledge);
        var gone = sheet.Standings.Out.ToDictionary(one => one.Entry.Number);
        using var bytes = new MemoryStream();
        using (var csv = new CsvWriter(new StreamWriter(bytes, CsvText.Utf8), CultureInfo.InvariantCulture))
        {
            Row(csv, Columns);
            foreach (var entry in sheet.Board.Entries.Values.OrderBy(entry => entry.Number))
            {
                Row(csv, Cells(sheet, entry, gone.GetValueOrDefault(entry.Number), words));
            }
        }

        return new ReplyFile($"derby-{sheet.Derby.Number}.csv", "text/csv", bytes.ToArray());
    }

    private static IEnumerable<string> Cells(DerbySheet sheet, EntryState entry, OutEntry? gone, DerbyWords words)
    {
        var who = sheet.CompetitorOf(entry.Angler);
        return
        [
            who is not null && sheet.Standings.Find(who) is { } line ? line.Rank.ToString("0.#", CultureInfo.InvariantCulture) : "",
            sheet.Names[entry.Angler],
            who?.Team ?? "",
            entry.Number.ToString(CultureInfo.InvariantCulture),
            words.SpeciesOf(entry),
            words.Length(entry.Measured),
            words.Length(sheet.Settings.Grid.Score(entry.Measured, entry.Penalty)),
            words.Stamp(entry.CaughtAt),
            words.Stamp(entry.ReceivedAt),
            gone is null ? "yes" : "no",
            gone is null ? "" : words.Why(gone),
            entry.Penalty > 0 ? words.Length(new Core.Fish.ExactLength(entry.Penalty, sheet.Settings.Grid.Step.Unit)) : "",
            entry.Reason ?? "",
        ];
    }

    private static void Row(CsvWriter csv, IEnumerable<string> cells)
    {
        foreach (var cell in cells)
        {
            csv.WriteField(FormulaGuard.Put(cell));
        }

        csv.NextRecord();
    }
}
