using System.Data.Common;
using System.Diagnostics.CodeAnalysis;
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

    private readonly Dictionary<(string Sql, Type Parameters), Prepared> _statements = new(new ByText());
    private Recollections? _recollections;

    /// <summary>What was read over it before and is still true.</summary>
    public Recollections Recollections => _recollections ??= new Recollections(connection);

    /// <summary>Whether a transaction is open.</summary>
    public bool IsInTransaction => raw.sqlite3_get_autocommit(connection.Handle) == 0;

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
        where TParameters : class
    {
        var prepared = Bound(sql, parameters);
        return All(prepared.Statement, row => prepared.RowsOf(rows)(row));
    }

    /// <summary>Asks for many rows, each read without a detour.</summary>
    /// <param name="sql">One of a limited number of texts: each stays compiled.</param>
    /// <param name="parameters">An object whose properties are the parameters.</param>
    /// <param name="read">Reads the row that the statement stands on.</param>
    public List<TRow> Read<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, TRow> read)
        where TParameters : class => All(Bound(sql, parameters).Statement, read);

    /// <summary>Makes a change without parameters.</summary>
    /// <inheritdoc cref="Execute{TParameters}"/>
    public int Execute(string sql) => Execute(sql, Nothing);

    /// <summary>Makes a change.</summary>
    /// <returns>How many rows it touched.</returns>
    public int Execute<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class
    {
        var statement = Bound(sql, parameters).Statement;
        try
        {
            while (statement.Step())
            {
            }

            return statement.Changes;
        }
        finally
        {
            statement.Reset();
        }
    }

    /// <summary>Undoes the transaction that is open; nothing when a fault has undone it already.</summary>
    public void RollBack()
    {
        if (IsInTransaction)
        {
            Execute("ROLLBACK");
        }
    }

    /// <summary>Asks several things in one unchanging view of the file.</summary>
    public async Task<T> ViewAsync<T>(Func<PreparedConnection, Task<T>> ask)
    {
        Execute("BEGIN DEFERRED");
        try
        {
            return await ask(this);
        }
        finally
        {
            RollBack();
        }
    }

    public ValueTask DisposeAsync()
    {
        _recollections?.Dispose();
        foreach (var prepared in _statements.Values)
        {
            prepared.Statement.Dispose();
        }

        return connection.DisposeAsync();
    }

    private static List<TRow> All<TRow>(CompiledStatement statement, Func<DbDataReader, TRow> read)
    {
        var rows = new List<TRow>();
        try
        {
            while (statement.Step())
            {
                rows.Add(read(statement.Row));
            }

            return rows;
        }
        finally
        {
            statement.Reset();
        }
    }

    private Prepared<TParameters> Bound<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class
    {
        var key = (sql, typeof(TParameters));
        if (!_statements.TryGetValue(key, out var known))
        {
            _statements[key] = known = new Prepared<TParameters>(new CompiledStatement(connection, sql));
        }

        var prepared = (Prepared<TParameters>)known;
        prepared.Binding.Put(parameters);
        return prepared;
    }

    private abstract class Prepared(CompiledStatement statement)
    {
        private Delegate? _rows;

        public CompiledStatement Statement => statement;

        // What reads rows serves those of the same types alone.
        public Func<DbDataReader, TRow> RowsOf<TRow>(Func<DbDataReader, Func<DbDataReader, TRow>> rows)
        {
            if (_rows is not Func<DbDataReader, TRow> read)
            {
                read = rows(statement.Row);
                _rows = statement.Row.HasKnownTypes ? read : null;
            }

            return read;
        }
    }

    private sealed class Prepared<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(CompiledStatement statement) : Prepared(statement)
        where TParameters : class
    {
        public ParameterBinding<TParameters> Binding { get; } = new(statement);
    }

    // Nearly every text is a constant, the same object each time: to read it through for a hash would take as long as to run it.
    private sealed class ByText : IEqualityComparer<(string Sql, Type Parameters)>
    {
        public bool Equals((string Sql, Type Parameters) one, (string Sql, Type Parameters) other) =>
            one.Parameters == other.Parameters && one.Sql == other.Sql;

        public int GetHashCode((string Sql, Type Parameters) key) => HashCode.Combine(key.Sql.Length, key.Parameters);
    }
}
