namespace CrewBot.Storage.People;

/// <summary>What one table holds on a person.</summary>
/// <param name="Table">The table.</param>
/// <param name="Column">The column that names the person: a table may name several.</param>
/// <param name="What">What its rows are: "fish".</param>
/// <param name="Rows">Each row's columns by name.</param>
public sealed record HeldRows(string Table, string Column, string What, IReadOnlyList<IReadOnlyDictionary<string, object?>> Rows);
