namespace CrewBot.Chat.CatchFiles;

/// <summary>A catch file as written.</summary>
/// <param name="Rows">Its rows below the first.</param>
/// <param name="Ignored">Columns that mean nothing here.</param>
internal sealed record CsvTable(IReadOnlyList<CsvRow> Rows, IReadOnlyList<string> Ignored);
