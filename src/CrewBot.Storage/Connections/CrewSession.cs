using Dapper;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>
/// An open transaction inside one crew. Repositories take it first, and it is the only place where a crew's number comes
/// from: no statement can be asked about another crew.
/// </summary>
public sealed class CrewSession
{
    /// <summary>No crew has this number: what a crew that never stored anything reads is nothing.</summary>
    internal const long NoCrew = 0;

    private readonly SqliteConnection _connection;
    private readonly CancellationToken _cancellationToken;

    internal CrewSession(SqliteConnection connection, long crewId, CancellationToken cancellationToken)
    {
        _connection = connection;
        _cancellationToken = cancellationToken;
        CrewId = crewId;
    }

    internal long CrewId { get; }

    /// <summary>Something was said that the pump must bring to its readers once it is on the disk.</summary>
    internal bool RingsAfterwards { get; private set; }

    internal async Task<IReadOnlyList<T>> QueryAsync<T>(string sql, object parameters) =>
        (await _connection.QueryAsync<T>(Command(sql, parameters))).AsList();

    internal Task<T?> FirstOrDefaultAsync<T>(string sql, object parameters) =>
        _connection.QueryFirstOrDefaultAsync<T>(Command(sql, parameters));

    internal Task<T> SingleAsync<T>(string sql, object parameters) =>
        _connection.QuerySingleAsync<T>(Command(sql, parameters));

    /// <summary>Runs a change.</summary>
    /// <returns>How many rows it touched.</returns>
    internal Task<int> ExecuteAsync(string sql, object parameters) => _connection.ExecuteAsync(Command(sql, parameters));

    internal void RingAfterwards() => RingsAfterwards = true;

    private CommandDefinition Command(string sql, object parameters) =>
        new(sql, parameters, cancellationToken: _cancellationToken);
}
