namespace CrewBot.Core.Tests.Published;

/// <summary>The rows of every table in this folder.</summary>
public static class PublishedTable
{
    public static IReadOnlyList<PublishedRow> Rows { get; } =
        [.. new[] { "tackle-physics.tsv", "fish-and-effort.tsv", "ice-and-weather.tsv" }.SelectMany(Read)];

    private static List<PublishedRow> Read(string table)
    {
        using var stream = typeof(PublishedTable).Assembly.GetManifestResourceStream(table)!;
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !line.StartsWith('#'))
            .Skip(1) // the heading
            .Select(line => line.Split('\t'))
            .Select(cells => new PublishedRow(cells[0], Inputs(cells[1]), cells[2], cells[3], cells[4], cells[5]))];
    }

    private static Dictionary<string, string> Inputs(string cell) => cell
        .Split(';', StringSplitOptions.RemoveEmptyEntries)
        .Select(input => input.Split('=', 2))
        .ToDictionary(parts => parts[0].Trim(), parts => parts[1].Trim());
}
