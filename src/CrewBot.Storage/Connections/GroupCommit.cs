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

    private readonly ConcurrentQueue<PendingWrite> _waiting = new();
    private int _isLed;
    private bool _isClosing;

    internal SqliteConnection Connection => connection.Connection;

    private int Changes => raw.sqlite3_total_changes(Connection.Handle);

    /// <summary>Makes a change and waits until it is on the disk.</summary>
    /// <param name="change">Makes the change; may be run again when the group it belonged to could not be committed.</param>
    /// <param name="cancellationToken">Gives up before the change is made.</param>
    public Task<T> RunAsync<T>(Func<PreparedConnection, Task<T>> change, CancellationToken cancellationToken)
    {
        var pending = new PendingWrite<T>(() => change(connection), cancellationToken);
        _waiting.Enqueue(pending);

        // Whoever finds nobody writing writes for all that have queued up by then.
        if (TryTakeLead())
        {
            _ = LeadAsync();
        }

        return pending.Told;
    }

    /// <summary>
    /// Asks something short on the connection that writes, when nobody does: it knows every page that it wrote, while each change
    /// makes a connection that reads read all of its pages anew.
    /// </summary>
    /// <returns>The answer; null at once when somebody writes, for the caller to ask elsewhere.</returns>
    public Task<T>? AskIfIdle<T>(Func<PreparedConnection, Task<T>> ask) =>
        !Volatile.Read(ref _isClosing) && TryTakeLead() ? AskAsync(ask) : null;

    /// <summary>Waits for the writes under way and closes the connection.</summary>
    public async ValueTask DisposeAsync()
    {
        Volatile.Write(ref _isClosing, true);
        try
        {
            await RunAsync(_ => Task.FromResult(true), CancellationToken.None);
        }
        catch (SqliteException)
        {
            // Whoever waited for a write has been told; closing goes on.
        }

        await connection.DisposeAsync();
    }

    private bool TryTakeLead() => Interlocked.Exchange(ref _isLed, 1) == 0;

    // A full fence: whoever gives it up looks next whether somebody waits, and must not look before others can see that nobody leads.
    private void GiveUpLead() => Interlocked.Exchange(ref _isLed, 0);

    private async Task<T> AskAsync<T>(Func<PreparedConnection, Task<T>> ask)
    {
        try
        {
            return await connection.ViewAsync(ask);
        }
        finally
        {
            GiveUpLead();
            if (!_waiting.IsEmpty && TryTakeLead())
            {
                // Whoever asked has the answer and writes for nobody.
                _ = Task.Run(LeadAsync);
            }
        }
    }

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

            GiveUpLead();
        }
        while (!_waiting.IsEmpty && TryTakeLead());
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
                if (!connection.IsInTransaction || (write.Fault is not null && Changes != before))
                {
                    connection.RollBack();
                    return false;
                }
            }

            connection.Execute(CommitSql);
            return true;
        }
        catch (SqliteException)
        {
            connection.RollBack();
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

        connection.RollBack();
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
}
