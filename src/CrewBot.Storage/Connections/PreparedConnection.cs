using System.Data.Common;
using System.Reflection;
using Dapper;
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
    private readonly Dictionary<(string Sql, Type? Parameters), Statement> _statements = [];

    /// <summary>What lies below, for what is done once.</summary>
    public SqliteConnection Connection => connection;

    /// <summary>Asks; gives every row.</summary>
    /// <param name="sql">One of a limited number of texts: each stays compiled.</param>
    /// <param name="parameters">An object whose properties are the parameters; null for none.</param>
    public List<T> Query<T>(string sql, object? parameters = null)
    {
        var statement = Bound(sql, parameters);
        using var reader = statement.Command.ExecuteReader();
        if (!reader.HasRows)
        {
            return [];
        }

        if (statement.Parser is null && IsRow(typeof(T)) && HasKnownTypes(reader))
        {
            statement.Parser = reader.GetRowParser<T>();
        }

        if (statement.Parser is not Func<DbDataReader, T> parse)
        {
            return [.. reader.Parse<T>()];
        }

        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(parse(reader));
        }

        return rows;
    }

    /// <summary>Asks for many rows, each read without a detour.</summary>
    /// <param name="sql">One of a limited number of texts: each stays compiled.</param>
    /// <param name="parameters">An object whose properties are the parameters.</param>
    /// <param name="read">Reads the row that the reader stands on.</param>
    public List<T> Query<T>(string sql, object parameters, Func<SqliteDataReader, T> read)
    {
        using var reader = Bound(sql, parameters).Command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    /// <summary>Makes a change.</summary>
    /// <returns>How many rows it touched.</returns>
    public int Execute(string sql, object? parameters = null) => Bound(sql, parameters).Command.ExecuteNonQuery();

    public async ValueTask DisposeAsync()
    {
        foreach (var statement in _statements.Values)
        {
            await statement.Command.DisposeAsync();
        }

        await connection.DisposeAsync();
    }

    // Numbers and texts are converted as each one asks.
    private static bool IsRow(Type type) => type.IsClass && type != typeof(string) && type != typeof(object);

    // A parser serves rows of the same types alone. Those of a table's columns are fixed; that of an expression shows in its value.
    private static bool HasKnownTypes(SqliteDataReader reader) => Enumerable.Range(0, reader.FieldCount).All(column =>
        raw.sqlite3_column_decltype(reader.Handle, column).utf8_to_string() is not null
        || raw.sqlite3_column_type(reader.Handle, column) != raw.SQLITE_NULL);

    private Statement Bound(string sql, object? parameters)
    {
        var key = (sql, parameters?.GetType());
        if (!_statements.TryGetValue(key, out var statement))
        {
            _statements[key] = statement = Compiled(sql, key.Item2);
        }

        for (var at = 0; at < statement.Parameters.Length; at++)
        {
            statement.Command.Parameters[at].Value = statement.Parameters[at].GetValue(parameters) ?? DBNull.Value;
        }

        return statement;
    }

    private Statement Compiled(string sql, Type? parameters)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Texts are constants; what people write comes in parameters.
        command.CommandText = sql;
#pragma warning restore CA2100
        PropertyInfo[] named = [.. parameters?.GetProperties().Where(property => sql.Contains($"@{property.Name}", StringComparison.Ordinal)) ?? []];
        foreach (var property in named)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = $"@{property.Name}" });
        }

        return new Statement(command, named);
    }

    private sealed record Statement(SqliteCommand Command, PropertyInfo[] Parameters)
    {
        /// <summary>Maps its rows, a function from a row to what was first asked for; null while that is not known for good.</summary>
        public Delegate? Parser { get; set; }
    }
}
