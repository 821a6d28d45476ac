using System.Collections.Concurrent;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace CrewBot.Storage.Connections;

/// <summary>
/// The single writer. Changes that arrive while another is being flushed to the disk share the next flush, and one caller's
/// failure is not another's: one that failed half-way is undone with its whole group, and each is then made by itself.
/// </summary>
/// <param name="connection">Belongs to the writer from now on.</param>
internal sealed class GroupCommit(PreparedConnection connection) : IAsyncDisposable
{
    private const int MostInGroup = 256;
    private const string BeginSql = "BEGIN IMMEDIATE";
    private const string CommitSql = "COMMIT";
    private const string RollbackSql = "ROLLBACK";

    private readonly ConcurrentQueue<PendingWrite> _waiting = new();
    private int _isLed;

    internal SqliteConnection Connection => connection.Connection;

    private bool InTransaction => raw.sqlite3_get_autocommit(Connection.Handle) == 0;

    private int Changes => raw.sqlite3_total_changes(Connection.Handle);

    /// <summary>Makes a change and waits until it is on the disk.</summary>
    /// <param name="change">Makes the change; may be run again when the group it belonged to could not be committed.</param>
    /// <param name="cancellationToken">Gives up before the change is made.</param>
    public Task<T> RunAsync<T>(Func<PreparedConnection, Task<T>> change, CancellationToken cancellationToken)
    {
        var pending = new PendingWrite<T>(() => change(connection), cancellationToken);
        _waiting.Enqueue(pending);

        // Whoever finds nobody writing writes for all that have queued up by then.
        if (Interlocked.Exchange(ref _isLed, 1) == 0)
        {
            _ = LeadAsync();
        }

        return pending.Told;
    }

    public ValueTask DisposeAsync() => connection.DisposeAsync();

    private async Task LeadAsync()
    {
        do
        {
            while (Take() is { Count: > 0 } group)
            {
                try
                {
                    await WriteAsync(group);
                }
#pragma warning disable CA1031 // Nobody may wait for ever, whatever the connection throws.
                catch (Exception fault)
#pragma warning restore CA1031
                {
                    group.ForEach(write => write.Fault = fault);
                }

                group.ForEach(write => write.Tell());
                if (!_waiting.IsEmpty)
                {
                    // The first caller has its answer by now and must not be held up by those behind it.
                    await Task.Yield();
                }
            }

            Volatile.Write(ref _isLed, 0);
        }
        while (!_waiting.IsEmpty && Interlocked.Exchange(ref _isLed, 1) == 0);
    }

    private List<PendingWrite> Take()
    {
        var group = new List<PendingWrite>();
        while (group.Count < MostInGroup && _waiting.TryDequeue(out var next))
        {
            group.Add(next);
        }

        return group;
    }

    private async Task WriteAsync(List<PendingWrite> group)
    {
        if (group.Count > 1 && await TryTogetherAsync(group))
        {
            return;
        }

        foreach (var write in group)
        {
            write.Fault = null;
            await AloneAsync(write);
        }
    }

    /// <summary>Writes a group in one transaction. A refusal, which changes nothing, takes nothing from the others.</summary>
    /// <returns>False when the transaction was lost, with every change in it.</returns>
    private async Task<bool> TryTogetherAsync(List<PendingWrite> group)
    {
        try
        {
            connection.Execute(BeginSql);
        }
        catch (SqliteException locked)
        {
            // Each of them alone would wait as long for nothing.
            group.ForEach(write => write.Fault = locked);
            return true;
        }

        try
        {
            foreach (var write in group)
            {
                var before = Changes;
                await MakeAsync(write);
                if (!InTransaction || (write.Fault is not null && Changes != before))
                {
                    RollBack();
                    return false;
                }
            }

            connection.Execute(CommitSql);
            return true;
        }
        catch (SqliteException)
        {
            RollBack();
            return false;
        }
    }

    private async Task AloneAsync(PendingWrite write)
    {
        try
        {
            connection.Execute(BeginSql);
            await MakeAsync(write);
            if (write.Fault is null)
            {
                connection.Execute(CommitSql);
            }
        }
        catch (SqliteException fault)
        {
            write.Fault = fault;
        }

        RollBack();
    }

    private static async Task MakeAsync(PendingWrite write)
    {
        if (write.IsGivenUp)
        {
            write.Fault = new OperationCanceledException();
            return;
        }

        try
        {
            await write.MakeAsync();
        }
#pragma warning disable CA1031 // Whatever it is belongs to the caller, who gets it; the others go on.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            write.Fault = fault;
        }
    }

    private void RollBack()
    {
        if (InTransaction)
        {
            connection.Execute(RollbackSql);
        }
    }
}
