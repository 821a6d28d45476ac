using System.Globalization;
using CrewBot.Chat.Commands;
using CrewBot.Chat.Tables;
using CsvHelper;
using CsvHelper.Configuration;

namespace CrewBot.Chat.CatchFiles;

/// <summary>Writes and reads a catch file as comma-separated values (RFC 4180), in UTF-8.</summary>
internal static class CatchCsv
{
    private const int MostRows = 50_000;

    public static ReadOnlyMemory<byte> Write(IEnumerable<FileCatch> fish)
    {
        using var bytes = new MemoryStream();
        using (var csv = new CsvWriter(new StreamWriter(bytes, CsvText.Utf8), new CsvConfiguration(CultureInfo.InvariantCulture)))
        {
            foreach (var column in CatchColumns.All)
            {
                csv.WriteField(column.Name);
            }

            csv.NextRecord();
            foreach (var one in fish)
            {
                foreach (var column in CatchColumns.All)
                {
                    csv.WriteField(FormulaGuard.Put(column.Of(one) ?? ""));
                }

                csv.NextRecord();
            }
        }

        return bytes.ToArray();
    }

    /// <summary>Takes a file apart.</summary>
    /// <returns>Its rows, or in a line why it is no catch file.</returns>
    public static Reading<CsvTable> Read(ReadOnlyMemory<byte> content)
    {
        var opened = CsvText.Open(content);
        if (opened.Fault is { } fault)
        {
            return new Misread(fault);
        }

        using var parser = opened.Value!;
        return Read(parser);
    }

    private static Reading<CsvTable> Read(CsvParser parser)
    {
        if (!parser.Read())
        {
            return new Misread($"The file is empty. Its first row names the columns: {CatchColumns.Species}, {CatchColumns.CaughtAt} and others.");
        }

        var names = parser.Record!.Select(name => name.Trim().ToLowerInvariant()).ToList();
        if (Missing(names) is { } missing)
        {
            return new Misread(missing);
        }

        var rows = new List<CsvRow>();
        for (var line = parser.RawRow + 1; parser.Read(); line = parser.RawRow + 1)
        {
            if (rows.Count == MostRows)
            {
                return new Misread($"The file has more than {MostRows} rows: split it.");
            }

            rows.Add(Row(line, names, parser.Record!));
        }

        return new CsvTable(rows, [.. names.Where(name => name.Length > 0 && CatchColumns.All.All(column => column.Name != name))]);
    }

    private static string? Missing(List<string> names)
    {
        if (names.Where(name => name.Length > 0).GroupBy(name => name).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            return $"The first row names {Quoting.Quote(twice.Key)} twice.";
        }

        string[] needed = [CatchColumns.Species, CatchColumns.CaughtAt];
        return needed.FirstOrDefault(name => !names.Contains(name)) is { } missing
            ? $"The first row has no column {missing}. It needs {string.Join(" and ", needed)}; an export shows the others."
            : null;
    }

    private static CsvRow Row(int line, List<string> names, string[] cells)
    {
        if (cells.Length > names.Count)
        {
            return new CsvRow(line, new Dictionary<string, string>(), $"{cells.Length} cells for {names.Count} columns: is a quotation mark missing?");
        }

        var said = new Dictionary<string, string>();
        for (var at = 0; at < cells.Length; at++)
        {
            if (FormulaGuard.Take(cells[at]) is { Length: > 0 } text)
            {
                said[names[at]] = text;
            }
        }

        return new CsvRow(line, said, null);
    }
}
