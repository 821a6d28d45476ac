using CrewBot.Chat.Catches;
using CrewBot.Chat.Commands;
using CrewBot.Core.Knowledge;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Reads the rows of a catch file with the readers of the options, so that a file may say what a person may say.</summary>
internal sealed class RowReader(CatchOptions options, TradeKnowledge knowledge, Request request)
{
    private const int HashDigits = 64;

    private static readonly NameReader Names = new("a name");
    private static readonly FreeTextReader Photos = new("a link to a photo");

    /// <summary>Reads one row.</summary>
    /// <returns>The fish, or in a line the first thing that is wrong with it.</returns>
    public Reading<FileCatch> Read(CsvRow row)
    {
        try
        {
            return row.Fault is { } fault ? new Misread(fault) : Fish(row);
        }
        catch (FormatException misread)
        {
            return new Misread(misread.Message);
        }
    }

    /// <summary>What is odd with a fish, though it may be right; null when nothing is.</summary>
    public string? OddityOf(FileCatch fish) =>
        CatchDraft.OddityOf(fish.Entry, knowledge.Species[fish.Entry.Species], request);

    private FileCatch Fish(CsvRow row)
    {
        var species = Needed(row, CatchColumns.Species, options.Species.Reader);
        var caughtAt = CellReading.Instant(row, CatchColumns.CaughtAt, request.Caller.Zone)
            ?? throw new FormatException($"{CatchColumns.CaughtAt} is empty.");
        if (caughtAt > request.At + CatchDraft.ClocksDiffer)
        {
            throw new FormatException($"{CatchColumns.CaughtAt} {Quoting.Quote(row[CatchColumns.CaughtAt]!)} is still to come.");
        }

        var fish = new FileCatch
        {
            Number = Value(row, CatchColumns.Number, options.Number.Reader),
            AnglerId = Text(row, CatchColumns.AnglerId, Names),
            Angler = Text(row, CatchColumns.Angler, Names),
            Water = Text(row, CatchColumns.Water, Names),
            Spot = Text(row, CatchColumns.Spot, Names),
            VoidedAt = CellReading.Instant(row, CatchColumns.VoidedAt, TimeZoneInfo.Utc),
            Entry = Entry(row, species, caughtAt),
        };
        return fish is { Spot: not null, Water: null } ? throw new FormatException("A spot needs its water.") : fish;
    }

    private CatchEntry Entry(CsvRow row, Species species, DateTimeOffset caughtAt) => new()
    {
        MemberId = 0,
        Species = species.Key,
        CaughtAt = caughtAt,
        LoggedAt = CellReading.Instant(row, CatchColumns.LoggedAt, TimeZoneInfo.Utc) ?? request.At,
        Length = CellReading.Length(row, CatchColumns.Length, CatchColumns.LengthUnit, options.Length.Reader),
        Weight = CellReading.Mass(row, CatchColumns.Weight, CatchColumns.WeightUnit, options.Weight.Reader),
        Girth = CellReading.Length(row, CatchColumns.Girth, CatchColumns.GirthUnit, options.Girth.Reader),
        Depth = CellReading.Length(row, CatchColumns.Depth, CatchColumns.DepthUnit, options.Depth.Reader),
        Presentation = row[CatchColumns.Presentation] is null ? null : Needed(row, CatchColumns.Presentation, options.Presentation.Reader).Key,
        Lure = Text(row, CatchColumns.Lure, options.Lure.Reader),
        Mood = Value(row, CatchColumns.Mood, options.Mood.Reader) is { } mood ? mood.ToString().ToLowerInvariant() : null,
        Line = Value(row, CatchColumns.Line, options.Line.Reader),
        Kept = Value(row, CatchColumns.Fate, options.Fate.Reader),
        Note = Text(row, CatchColumns.Note, options.Note.Reader),
        Photo = Text(row, CatchColumns.Photo, Photos),
        PhotoHash = Hash(row),
    };

    private static string? Hash(CsvRow row) => row[CatchColumns.PhotoHash] switch
    {
        null => null,
        { Length: HashDigits } digits when digits.All(char.IsAsciiHexDigit) => digits.ToLowerInvariant(),
        { } other => throw new FormatException($"{CatchColumns.PhotoHash} {Quoting.Quote(other)} is no SHA-256: give its {HashDigits} hexadecimal digits or leave it out."),
    };

    private string? Text(CsvRow row, string column, OptionReader<string> reader) =>
        row[column] is null ? null : Needed(row, column, reader);

    private T? Value<T>(CsvRow row, string column, OptionReader<T> reader)
        where T : struct =>
        row[column] is null ? null : Needed(row, column, reader);

    private T Needed<T>(CsvRow row, string column, OptionReader<T> reader)
    {
        var text = row[column] ?? throw new FormatException($"{column} is empty.");
        if (Quoting.HoldsControl(text))
        {
            throw new FormatException($"{column} holds a control character.");
        }

        var reading = reader.Read(text, request.Caller);
        return reading.Fault is { } fault ? throw new FormatException($"{column}: {fault}") : reading.Value!;
    }
}
