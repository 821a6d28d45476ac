using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>
/// A connection that compiles each statement once: compiling costs more than running it, and the same hundred statements are
/// asked over and over. One at a time uses it.
/// </summary>
/// <param name="connection">Open; belongs to this from now on.</param>
internal sealed class PreparedConnection(SqliteConnection connection) : IAsyncDisposable
{
    private static readonly object Nothing = new();

    private readonly Dictionary<(string Sql, Type Parameters), Statement> _statements = [];
    private Recollections? _recollections;

    /// <summary>What was read over it before and is still true.</summary>
    public Recollections Recollections => _recollections ??= new Recollections(this);

    /// <summary>What lies below, for what is done once.</summary>
    public SqliteConnection Connection => connection;

    /// <summary>Asks a question without parameters.</summary>
    /// <inheritdoc cref="Query{TRow, TParameters}"/>
    public List<TRow> Query<TRow>(string sql, Func<DbDataReader, Func<DbDataReader, TRow>> rows) => Query(sql, Nothing, rows);

    /// <summary>Asks; gives every row.</summary>
    /// <param name="sql">One of a limited number of texts: each stays compiled.</param>
    /// <param name="parameters">An object whose properties are the parameters.</param>
    /// <param name="rows">Gives what reads the rows of an answer with such columns.</param>
    public List<TRow> Query<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
    {
        var statement = Bound(sql, parameters);
        using var reader = statement.Command.ExecuteReader();
        if (!reader.HasRows)
        {
            return [];
        }

        if (statement.Rows is not Func<DbDataReader, TRow> read)
        {
            read = rows(reader);
            statement.Rows = HasKnownTypes(reader) ? read : null;
        }

        return All(reader, read);
    }

    /// <summary>Asks for many rows, each read without a detour.</summary>
    /// <param name="sql">One of a limited number of texts: each stays compiled.</param>
    /// <param name="parameters">An object whose properties are the parameters.</param>
    /// <param name="read">Reads the row that the reader stands on.</param>
    public List<TRow> Read<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<SqliteDataReader, TRow> read)
    {
        using var reader = Bound(sql, parameters).Command.ExecuteReader();
        return All(reader, read);
    }

    /// <summary>Makes a change without parameters.</summary>
    /// <inheritdoc cref="Execute{TParameters}"/>
    public int Execute(string sql) => Execute(sql, Nothing);

    /// <summary>Makes a change.</summary>
    /// <returns>How many rows it touched.</returns>
    public int Execute<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters) =>
        Bound(sql, parameters).Command.ExecuteNonQuery();

    public async ValueTask DisposeAsync()
    {
        foreach (var statement in _statements.Values)
        {
            await statement.Command.DisposeAsync();
        }

        await connection.DisposeAsync();
    }

    private static List<TRow> All<TRow>(SqliteDataReader reader, Func<SqliteDataReader, TRow> read)
    {
        var rows = new List<TRow>();
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    // What reads rows serves those of the same types alone. The types of a table's columns are fixed; that of an expression shows in
    // its value.
    private static bool HasKnownTypes(SqliteDataReader reader) => Enumerable.Range(0, reader.FieldCount).All(column =>
        raw.sqlite3_column_decltype(reader.Handle, column).utf8_to_string() is not null
        || raw.sqlite3_column_type(reader.Handle, column) != raw.SQLITE_NULL);

    private Statement Bound<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
    {
        var key = (sql, typeof(TParameters));
        if (!_statements.TryGetValue(key, out var statement))
        {
            _statements[key] = statement = Compiled<TParameters>(sql);
        }

        for (var at = 0; at < statement.Parameters.Length; at++)
        {
            statement.Command.Parameters[at].Value = statement.Parameters[at].GetValue(parameters) ?? DBNull.Value;
        }

        return statement;
    }

    private Statement Compiled<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Texts are constants; what people write comes in parameters.
        command.CommandText = sql;
#pragma warning restore CA2100
        PropertyInfo[] named = [.. typeof(TParameters).GetProperties().Where(property => sql.Contains($"@{property.Name}", StringComparison.Ordinal))];
        foreach (var property in named)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = $"@{property.Name}" });
        }

        return new Statement(command, named);
    }

    private sealed record Statement(SqliteCommand Command, PropertyInfo[] Parameters)
    {
        /// <summary>Reads its rows, a function of a reader that stands on one; null while that is not known for good.</summary>
        public Delegate? Rows { get; set; }
    }
}
