using System.Globalization;
using CrewBot.Chat.Catches;
using CrewBot.Core.Derbies;
using CrewBot.Core.Derbies.Scoring;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Derbies;

namespace CrewBot.Chat.Derbies;

/// <summary>Says a derby in words. Lengths stand in the unit of the derby's board alone: converted they would score differently.</summary>
internal sealed class DerbyWords(Derby derby, TradeKnowledge knowledge)
{
    private const int MostFurther = 30;

    private readonly TimeZoneInfo _zone = TimeZoneInfo.FindSystemTimeZoneById(derby.Zone);

    private DerbySettings Settings => derby.Settings;

    /// <summary>What lengths are told in.</summary>
    public string Unit => Settings.Grid.Step.Family == UnitFamily.Metric ? "cm" : "in";

    /// <summary>A length on the board: "22.25 in".</summary>
    public string Length(ExactLength length) =>
        $"{Number(Unit == "in" ? (decimal)length.Nanometres / 25_400_000 : (decimal)length.Nanometres / 10_000_000, "0.###")} {Unit}";

    /// <summary>A total by the derby's rule: "61.25 in", "212.48 %", "3 fish".</summary>
    public string Total(decimal total) => Settings.Scoring.Measure switch
    {
        LengthMeasure => $"{Number(total, "0.###")} {Unit}",
        PointsMeasure => $"{Number(total, "0.###")} points",
        CountMeasure => $"{Number(total, "0")} fish",
        _ => $"{Number(total, "0.00")} %",
    };

    /// <summary>A place: "1.", or "=2." for a shared one.</summary>
    public static string Place(Standing line) => $"{(line.IsShared ? "=" : "")}{Number(line.Rank, "0.#")}.";

    /// <summary>An instant by the derby's clock: "14:20", with the date on another day.</summary>
    public string Time(DateTimeOffset at, DateTimeOffset now) => Moment.Show(TimeZoneInfo.ConvertTime(at, _zone), now);

    /// <summary>An instant by the derby's clock to the second, with its offset, for files.</summary>
    public string Stamp(DateTimeOffset at) =>
        TimeZoneInfo.ConvertTime(at, _zone).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);

    /// <summary>A fish that counts: "walleye 22.25 in".</summary>
    public string Fish(ScoredFish fish) => $"{SpeciesOf(fish.Entry)} {Length(fish.Scored)}";

    public string SpeciesOf(EntryState entry) => CatchWords.NameOf(entry.Species, knowledge);

    /// <summary>An entry: "entry 3, Ana's walleye of 22.25 in".</summary>
    public string Entry(EntryState entry, DerbySheet sheet) =>
        $"entry {entry.Number}, {sheet.Names[entry.Angler]}'s {SpeciesOf(entry)} of {Length(entry.Measured)}";

    /// <summary>A line of the standings: "1. Ana 61.25 in: walleye 22.25 in, walleye 20.5 in".</summary>
    public string Line(Standing line, DerbySheet sheet)
    {
        var fish = line.Tally.Used.Take(4).Select(Fish);
        var more = line.Tally.Used.Count > 4 ? $" and {line.Tally.Used.Count - 4} more" : "";
        return $"{Place(line)} {sheet.NameOf(line.Tally.Who)} {Total(line.Tally.Total)}: {string.Join(", ", fish)}{more}";
    }

    /// <summary>The standings behind the first few, and what does not count; where there is much of it, the rest is in the file.</summary>
    public IEnumerable<string> Further(DerbySheet sheet, int shown)
    {
        var (lines, gone) = (sheet.Standings.Lines, sheet.Standings.Out);
        return
        [
            .. lines.Skip(shown).Take(MostFurther).Select(line => Line(line, sheet)),
            .. gone.TakeLast(MostFurther).Select(one => $"Does not count: {Entry(one.Entry, sheet)}: {Why(one)}."),
            .. lines.Count - shown > MostFurther || gone.Count > MostFurther ? (string[])["And more: /derby results gives all of it in a file."] : [],
        ];
    }

    /// <summary>Why an entry does not count, as the end of "does not count: …".</summary>
    public string Why(OutEntry gone) => gone.Why switch
    {
        OutReason.Withdrawn => "taken back",
        OutReason.Void => "void in the log",
        OutReason.AnglerLeft => "its angler has left",
        OutReason.OutsideWindow => "caught outside the window",
        OutReason.Late => "word of it came too late, a steward has to take it",
        OutReason.Disputed => $"under protest ({gone.Entry.Reason}) until a steward has ruled",
        OutReason.Refused => $"refused ({gone.Entry.Reason})",
        OutReason.Waiting => Settings.Evidence == Evidence.Photo ? "waits for a steward, there is no photo" : "waits for a crewmate's word",
        OutReason.OtherSpecies => "the species does not count",
        OutReason.OtherWater => "the water does not count",
        OutReason.OtherFate => Settings.Limits.Kept == true ? "only kept fish count" : "only released fish count",
        OutReason.TooShort => $"under {Length(Settings.Limits.Minimum!.Value)}",
        _ => "the rule has no score for it",
    };

    /// <summary>What parted two equal totals.</summary>
    public static string Tie(TieBreak tie) => tie switch
    {
        TieBreak.Earliest => "who reached the total first",
        TieBreak.NextBest => "the next best fish",
        _ => "the biggest fish",
    };

    private static string Number(decimal number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
