using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Core.Fish;
using CrewBot.Storage.Catches;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Reads the cells whose exactness matters: measures to the nanometre and nanogram, instants to the millisecond.</summary>
internal static class CellReading
{
    private const string UpToTwelvePlaces = "0.############";

    private static readonly string[] Instants =
        [CatchColumns.Instant, "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mmK", "yyyy-MM-dd HH:mm:ssK", "yyyy-MM-dd HH:mmK"];

    /// <summary>An instant; one without an offset is by a zone's clock.</summary>
    /// <exception cref="FormatException">It is none.</exception>
    public static DateTimeOffset? Instant(CsvRow row, string column, TimeZoneInfo zone)
    {
        if (row[column] is not { } text)
        {
            return null;
        }

        if (!DateTime.TryParseExact(text, Instants, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var read))
        {
            throw new FormatException($"{column}: can't read {Quoting.Quote(text)}. Give a time such as 2027-01-16T14:20-06:00 or 2027-01-16 14:20.");
        }

        return read.Kind == DateTimeKind.Unspecified
            ? new DateTimeOffset(read, zone.GetUtcOffset(read))
            : DateTimeOffset.ParseExact(text, Instants, CultureInfo.InvariantCulture, DateTimeStyles.None);
    }

    /// <exception cref="FormatException">It is no length, or outside what the reader takes.</exception>
    public static ExactLength? Length(CsvRow row, string column, string unitColumn, OptionReader<ExactLength> reader) =>
        Text(row, column, unitColumn) is not { } text ? null
        : Exact(row[column]!) is { } number && StoredUnits.LengthUnitOf(row[unitColumn]) is { } unit
            ? InRange(column, reader.Read(Short(number, row[unitColumn]!), CrewUnits.Metric), () => ExactLength.From(number, unit))
            : InRange(column, reader.Read(text, CrewUnits.Metric), exact: null);

    /// <exception cref="FormatException">It is no mass, or outside what the reader takes.</exception>
    public static ExactMass? Mass(CsvRow row, string column, string unitColumn, OptionReader<ExactMass> reader) =>
        Text(row, column, unitColumn) is not { } text ? null
        : Exact(row[column]!) is { } number && StoredUnits.MassUnitOf(row[unitColumn]) is { } unit
            ? InRange(column, reader.Read(Short(number, row[unitColumn]!), CrewUnits.Metric), () => ExactMass.From(number, unit))
            : InRange(column, reader.Read(text, CrewUnits.Metric), exact: null);

    // A bare number would be guessed at: another's file may be in any unit.
    private static string? Text(CsvRow row, string column, string unitColumn) => (row[column], row[unitColumn]) switch
    {
        (null, null) => null,
        (null, _) => throw new FormatException($"{unitColumn} stands without its number."),
        ({ } text, null) => text.Any(character => char.IsLetter(character) || character is '"' or '\'')
            ? text
            : throw new FormatException($"{column} {Quoting.Quote(text)} has no unit: give it in {unitColumn}."),
        ({ } text, { } unit) => $"{text} {unit}",
    };

    private static decimal? Exact(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 1_000_000_000
            ? number
            : null;

    private static string Short(decimal number, string unit) => $"{number.ToString(UpToTwelvePlaces, CultureInfo.InvariantCulture)} {unit}";

    private static T InRange<T>(string column, Reading<T> reading, Func<T>? exact)
        where T : struct =>
        reading.Fault is { } fault ? throw new FormatException($"{column}: {fault}") : exact is null ? reading.Value : exact();
}
