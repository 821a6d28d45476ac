using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>The one place that opens connections and sets their pragmas.</summary>
internal sealed class ConnectionFactory
{
    private const int BusySeconds = 5;

    private readonly string _string;

    static ConnectionFactory() => DefaultTypeMap.MatchNamesWithUnderscores = true;

    public ConnectionFactory(string path)
    {
        Path = path;
        _string = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWrite,
            DefaultTimeout = BusySeconds,
        }.ToString();
    }

    public string Path { get; }

    /// <summary>Opens the connection that writes. What it has committed is on the disk, and what it has deleted is not.</summary>
    public async Task<SqliteConnection> OpenForWritingAsync(CancellationToken cancellationToken)
    {
        var connection = new SqliteConnection(_string + ";Pooling=False");
        try
        {
            await connection.OpenAsync(cancellationToken);
            await connection.ExecuteAsync(
                $"PRAGMA busy_timeout = {BusySeconds * 1000}; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON;");
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    /// <summary>Opens a connection that reads, from a pool: a writer never makes it wait.</summary>
    public async Task<SqliteConnection> OpenForReadingAsync(CancellationToken cancellationToken)
    {
        var connection = new SqliteConnection(_string);
        try
        {
            await connection.OpenAsync(cancellationToken);
            await connection.ExecuteAsync($"PRAGMA busy_timeout = {BusySeconds * 1000}; PRAGMA query_only = ON;");
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    /// <summary>Closes the connections that wait in the pool, so that the file can be replaced.</summary>
    public void ClosePool()
    {
        using var any = new SqliteConnection(_string);
        SqliteConnection.ClearPool(any);
    }
}
