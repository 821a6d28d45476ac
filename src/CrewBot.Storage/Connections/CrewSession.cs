using System.Data.Common;
using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Storage.Connections;

/// <summary>
/// An open transaction inside one crew. Repositories take it first, and it is the only place where a crew's number comes
/// from: no statement can be asked about another crew.
/// </summary>
public sealed class CrewSession
{
    /// <summary>No crew has this number: what a crew that never stored anything reads is nothing.</summary>
    internal const long NoCrew = 0;

    private readonly PreparedConnection _connection;
    private readonly List<Action> _afterwards = [];
    private readonly CancellationToken _cancellationToken;

    internal CrewSession(PreparedConnection connection, long crewId, CancellationToken cancellationToken)
    {
        _connection = connection;
        _cancellationToken = cancellationToken;
        CrewId = crewId;
    }

    internal long CrewId { get; }

    /// <summary>Something was said that the pump must bring to its readers once it is on the disk.</summary>
    internal bool RingsAfterwards { get; private set; }

    // The engine runs in this process, so there is nothing to await; but a fault belongs to the one who awaits the answer.
#pragma warning disable CS1998
    internal async Task<IReadOnlyList<TRow>> QueryAsync<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
        where TParameters : class => Query(sql, parameters, rows);

    /// <summary>Asks where finding columns by name would take longer than finding the rows: for thousands, or with every fish.</summary>
    internal async Task<IReadOnlyList<TRow>> ReadAsync<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, TRow> read)
        where TParameters : class
    {
        _cancellationToken.ThrowIfCancellationRequested();
        return _connection.Read(sql, parameters, read);
    }

    internal async Task<TRow?> FirstOrDefaultAsync<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
        where TParameters : class => Query(sql, parameters, rows).FirstOrDefault();

    internal async Task<TRow> SingleAsync<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
        where TParameters : class => Query(sql, parameters, rows).Single();

    /// <summary>Runs a change.</summary>
    /// <returns>How many rows it touched.</returns>
    internal async Task<int> ExecuteAsync<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(string sql, TParameters parameters)
        where TParameters : class
    {
        _cancellationToken.ThrowIfCancellationRequested();
        return _connection.Execute(sql, parameters);
    }
#pragma warning restore CS1998

    internal void RingAfterwards() => RingsAfterwards = true;

    /// <summary>
    /// Does something once the transaction is over: after a change it is on the disk by then; when nothing came of the
    /// change, nothing is done. For what is kept in memory of what was read here.
    /// </summary>
    public void Afterwards(Action act) => _afterwards.Add(act);

    internal void Finish() => _afterwards.ForEach(act => act());

    private List<TRow> Query<TRow, [DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>(
        string sql, TParameters parameters, Func<DbDataReader, Func<DbDataReader, TRow>> rows)
        where TParameters : class
    {
        _cancellationToken.ThrowIfCancellationRequested();
        return _connection.Query(sql, parameters, rows);
    }
}
