using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>
/// A statement as the engine compiled it. The provider's command looks its parameters up by name and makes a reader each time that it
/// is run, which costs more than most statements do.
/// </summary>
internal sealed class CompiledStatement : IDisposable
{
    private readonly sqlite3 _database;
    private readonly sqlite3_stmt _statement;

    /// <summary>Compiles one statement.</summary>
    /// <exception cref="SqliteException">It can't be compiled.</exception>
    public CompiledStatement(SqliteConnection connection, string sql)
    {
        _database = connection.Handle!;
        Check(raw.sqlite3_prepare_v3(_database, sql, raw.SQLITE_PREPARE_PERSISTENT, out _statement));
        Row = new StatementRow(_statement);
    }

    /// <summary>The row that it stands on.</summary>
    public StatementRow Row { get; }

    /// <summary>How many rows the change that was made last touched.</summary>
    public int Changes => raw.sqlite3_changes(_database);

    /// <summary>What its parameters are called, in order; the first has the index 1.</summary>
    public IEnumerable<string> ParameterNames() => Enumerable.Range(1, raw.sqlite3_bind_parameter_count(_statement))
        .Select(index => raw.sqlite3_bind_parameter_name(_statement, index).utf8_to_string());

    public void Bind(int index, long value) => Check(raw.sqlite3_bind_int64(_statement, index, value));

    public void Bind(int index, string? value) =>
        Check(value is null ? raw.sqlite3_bind_null(_statement, index) : raw.sqlite3_bind_text(_statement, index, value));

    public void BindNull(int index) => Check(raw.sqlite3_bind_null(_statement, index));

    /// <summary>Goes to the next row.</summary>
    /// <returns>False when there is none.</returns>
    /// <exception cref="SqliteException">It failed.</exception>
    public bool Step()
    {
        var result = raw.sqlite3_step(_statement);
        Check(result);
        return result == raw.SQLITE_ROW;
    }

    /// <summary>Lets go of what it read, so that it can be run again. A fault was told by the step that met it.</summary>
    public void Reset() => raw.sqlite3_reset(_statement);

    public void Dispose() => _statement.Dispose();

    private void Check(int result) => SqliteException.ThrowExceptionForRC(result, _database);
}
