namespace CrewBot.Chat.CatchFiles;

/// <summary>A row of a catch file as written.</summary>
/// <param name="Line">The line of the file where it starts, the first row being line 1.</param>
/// <param name="Cells">Column names and texts; empty cells are left out.</param>
/// <param name="Fault">Why it is no row of the table, in a line; null when it is one.</param>
internal sealed record CsvRow(int Line, IReadOnlyDictionary<string, string> Cells, string? Fault)
{
    public string? this[string column] => Cells.GetValueOrDefault(column);
}
