using System.Collections.Concurrent;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>The one place that opens connections and sets their pragmas.</summary>
internal sealed class ConnectionFactory
{
    private const int BusySeconds = 5;

    // SQLITE_DBCONFIG_ENABLE_QPSG.
    private const int StablePlans = 1007;

    private readonly string _string;
    private readonly ConcurrentBag<PreparedConnection> _reading = [];
    private bool _isClosed;

    public ConnectionFactory(string path)
    {
        Path = path;
        _string = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWrite,
            DefaultTimeout = BusySeconds,
            Pooling = false,
        }.ToString();
    }

    public string Path { get; }

    /// <summary>Opens the connection that writes. What it has committed is on the disk, and what it has deleted is not.</summary>
    public async Task<SqliteConnection> OpenForWritingAsync(CancellationToken cancellationToken)
    {
        var connection = new SqliteConnection(_string);
        try
        {
            await connection.OpenAsync(cancellationToken);
            await connection.RunAsync(
                $"PRAGMA busy_timeout = {BusySeconds * 1000}; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON;");
            KeepPlans(connection);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    /// <summary>Takes a connection that reads, one that was given back where there is one: a writer never makes it wait.</summary>
    public ValueTask<PreparedConnection> TakeForReadingAsync(CancellationToken cancellationToken) =>
        _reading.TryTake(out var open) ? new(open) : OpenForReadingAsync(cancellationToken);

    /// <summary>Gives back a connection that reads, outside any transaction.</summary>
    public Task GiveBackAsync(PreparedConnection connection)
    {
        _reading.Add(connection);
        return Volatile.Read(ref _isClosed) ? CloseAsync() : Task.CompletedTask;
    }

    /// <summary>Closes the connections that wait to read, so that the file can be replaced.</summary>
    public async Task CloseAsync()
    {
        Volatile.Write(ref _isClosed, true);
        while (_reading.TryTake(out var connection))
        {
            await connection.DisposeAsync();
        }
    }

    private async ValueTask<PreparedConnection> OpenForReadingAsync(CancellationToken cancellationToken)
    {
        var connection = new SqliteConnection(_string);
        try
        {
            await connection.OpenAsync(cancellationToken);
            await connection.RunAsync($"PRAGMA busy_timeout = {BusySeconds * 1000}; PRAGMA query_only = ON;");
            KeepPlans(connection);
            return new PreparedConnection(connection);
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    // A plan that heeds a parameter's value is made anew for every other value, which costs many times what the statement does.
    private static void KeepPlans(SqliteConnection connection) => raw.sqlite3_db_config(connection.Handle, StablePlans, 1, out _);
}
