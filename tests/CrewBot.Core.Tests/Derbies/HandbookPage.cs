namespace CrewBot.Core.Tests.Derbies;

/// <summary>The tables of the handbook's page on derbies.</summary>
internal static class HandbookPage
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Promised", "derbies.md"));

    /// <summary>The rows of every table that starts with this head, each row by column.</summary>
    public static IEnumerable<string[]> Rows(string head)
    {
        var tables = Lines.Index().Where(line => line.Item.StartsWith($"| {head}", StringComparison.Ordinal));
        return tables.SelectMany(table => Lines.Skip(table.Index + 2).TakeWhile(line => line.StartsWith('|')).Select(Cells));
    }

    private static string[] Cells(string line) => [.. line.Trim().Trim('|').Split('|').Select(cell => cell.Trim())];
}
