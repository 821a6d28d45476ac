using CrewBot.Storage.Outbox;
using Microsoft.Data.Sqlite;

namespace CrewBot.Storage.Connections;

/// <summary>The file that everything lives in. Whatever it refuses, it refuses as a <see cref="StorageException"/>.</summary>
public sealed class Database : IAsyncDisposable
{
    private readonly ConnectionFactory _connections;
    private readonly GroupCommit _writer;
    private readonly CrewNumbers _crews = new();

    private int _isClosed;

    private Database(ConnectionFactory connections, GroupCommit writer)
    {
        _connections = connections;
        _writer = writer;
    }

    /// <summary>The whole path of the file.</summary>
    public string Path => _connections.Path;

    /// <summary>Rings when something was said that is to be brought to its readers.</summary>
    public Bell PostBell { get; } = new();

    /// <summary>The connection that writes, for tests that make it fail.</summary>
    internal SqliteConnection Writing => _writer.Connection;

    /// <summary>Opens the file, makes it when there is none, and brings it to the newest shape.</summary>
    /// <exception cref="StorageException">It can't be used; the line says why.</exception>
    public static async Task<Database> OpenAsync(string path, CancellationToken cancellationToken)
    {
        var whole = System.IO.Path.GetFullPath(path);
        DatabaseFile.Ensure(whole);
        var connections = new ConnectionFactory(whole);
        SqliteConnection? writing = null;
        try
        {
            writing = await connections.OpenForWritingAsync(cancellationToken);
            await Schema.Shape.BringUpAsync(writing, whole);
            return new Database(connections, new GroupCommit(new PreparedConnection(writing)));
        }
        catch (Exception fault)
        {
            if (writing is not null)
            {
                await writing.DisposeAsync();
            }

            if (fault is SqliteException outside && StorageFaults.IsOutside(outside))
            {
                throw StorageFaults.Of(outside, whole);
            }

            throw;
        }
    }

    /// <summary>Asks about one crew, in one unchanging view of it.</summary>
    /// <param name="crew">The key by which the crew's platform knows it.</param>
    /// <param name="ask">The questions.</param>
    /// <param name="cancellationToken">Stops asking.</param>
    /// <exception cref="StorageException">The file can't be read.</exception>
    public async Task<T> ReadAsync<T>(string crew, Func<CrewSession, Task<T>> ask, CancellationToken cancellationToken)
    {
        CrewSession? session = null;
        var answer = await ReadAsync(
            connection => ask(session = new CrewSession(connection, _crews.Find(connection, crew), cancellationToken)), cancellationToken);
        session!.Finish();
        return answer;
    }

    /// <summary>
    /// Asks what is asked again and again and seldom changes: the answer is kept until anything is committed to the file, and
    /// must itself never change.
    /// </summary>
    /// <param name="crew">The key by which the crew's platform knows it.</param>
    /// <param name="subject">What the questions are about: always the same ones about the same subject.</param>
    /// <param name="ask">The questions.</param>
    /// <param name="cancellationToken">Stops asking.</param>
    /// <exception cref="StorageException">The file can't be read.</exception>
    public Task<T> RecallAsync<T>(string crew, string subject, Func<CrewSession, Task<T>> ask, CancellationToken cancellationToken)
        where T : class => OverAsync(
        connection => connection.Recollections.Find(crew, subject) is T known
            ? Task.FromResult(known)
            : ReadToKeepAsync(connection, crew, subject, ask, cancellationToken),
        cancellationToken);

    /// <summary>
    /// Asks little about one crew, in one unchanging view of it, before something of it is changed: quicker than
    /// <see cref="ReadAsync{T}(string, Func{CrewSession, Task{T}}, CancellationToken)"/> while nobody writes, but whoever would write waits.
    /// </summary>
    /// <param name="crew">The key by which the crew's platform knows it.</param>
    /// <param name="ask">A few questions of a row or two.</param>
    /// <param name="cancellationToken">Stops asking.</param>
    /// <exception cref="StorageException">The file can't be read.</exception>
    public async Task<T> GlanceAsync<T>(string crew, Func<CrewSession, Task<T>> ask, CancellationToken cancellationToken)
    {
        CrewSession? session = null;
        Task<T> Ask(PreparedConnection connection) => ask(session = new CrewSession(connection, _crews.Find(connection, crew), cancellationToken));
        try
        {
            var answer = await (_writer.AskIfIdle(Ask) ?? ReadAsync(Ask, cancellationToken));
            session!.Finish();
            return answer;
        }
        catch (SqliteException fault) when (StorageFaults.IsOutside(fault))
        {
            throw StorageFaults.Of(fault, Path);
        }
    }

    /// <summary>Changes something of one crew. When this returns, it is on the disk; when it throws, nothing has changed.</summary>
    /// <param name="crew">The key by which the crew's platform knows it; its first write makes it known.</param>
    /// <param name="change">Makes the change. It may be run again, so it must do nothing but ask and change.</param>
    /// <param name="cancellationToken">Gives up before the change is made.</param>
    /// <exception cref="StorageException">The file can't be written.</exception>
    public async Task<T> WriteAsync<T>(string crew, Func<CrewSession, Task<T>> change, CancellationToken cancellationToken)
    {
        CrewSession? last = null;
        try
        {
            var result = await _writer.RunAsync(
                connection =>
                {
                    last = new CrewSession(connection, _crews.FindOrAdd(connection, crew), cancellationToken);
                    return change(last);
                },
                cancellationToken);
            last!.Finish();
            if (last.RingsAfterwards)
            {
                PostBell.Ring();
            }

            return result;
        }
        catch (SqliteException fault) when (StorageFaults.IsOutside(fault))
        {
            throw StorageFaults.Of(fault, Path);
        }
    }

    /// <summary>Changes something of one crew that gives nothing back.</summary>
    /// <param name="crew">The key by which the crew's platform knows it; its first write makes it known.</param>
    /// <param name="change">Makes the change. It may be run again, so it must do nothing but ask and change.</param>
    /// <param name="cancellationToken">Gives up before the change is made.</param>
    /// <exception cref="StorageException">The file can't be written.</exception>
    public Task WriteAsync(string crew, Func<CrewSession, Task> change, CancellationToken cancellationToken) =>
        WriteAsync(
            crew,
            async session =>
            {
                await change(session);
                return true;
            },
            cancellationToken);

    /// <summary>The keys of all crews, for work that is done crew by crew.</summary>
    /// <exception cref="StorageException">The file can't be read.</exception>
    public Task<IReadOnlyList<string>> CrewsAsync(CancellationToken cancellationToken) =>
        ReadAsync(connection => Task.FromResult(CrewNumbers.Keys(connection)), cancellationToken);

    /// <summary>The keys of the crews that a person has written in, the latest first: where they belong when no crew is named.</summary>
    /// <param name="person">The id by which the platform knows the person.</param>
    /// <param name="cancellationToken">Stops asking.</param>
    /// <exception cref="StorageException">The file can't be read.</exception>
    public Task<IReadOnlyList<string>> CrewsOfAsync(string person, CancellationToken cancellationToken) =>
        ReadAsync(connection => Task.FromResult(CrewsOfPerson.Keys(connection, person)), cancellationToken);

    /// <summary>Where something is still to be said, over all crews.</summary>
    /// <exception cref="StorageException">The file can't be read.</exception>
    internal Task<IReadOnlyList<PlaceDue>> AgendaAsync(CancellationToken cancellationToken) =>
        ReadAsync(connection => Task.FromResult(Agenda.Read(connection)), cancellationToken);

    /// <summary>Waits for the writes under way and closes the file.</summary>
    public async ValueTask DisposeAsync()
    {
        if (Interlocked.Exchange(ref _isClosed, 1) == 1)
        {
            return;
        }

        await _writer.DisposeAsync();
        await _connections.CloseAsync();
    }

    private Task<T> ReadAsync<T>(Func<PreparedConnection, Task<T>> ask, CancellationToken cancellationToken) =>
        OverAsync(connection => connection.ViewAsync(ask), cancellationToken);

    private async Task<T> ReadToKeepAsync<T>(
        PreparedConnection connection, string crew, string subject, Func<CrewSession, Task<T>> ask, CancellationToken cancellationToken)
        where T : class
    {
        CrewSession? session = null;
        var read = await connection.ViewAsync(view =>
        {
            // Asked again in the view: what is kept is of the version that it is kept for.
            view.Recollections.Find(crew, subject);
            return ask(session = new CrewSession(view, _crews.Find(view, crew), cancellationToken));
        });
        connection.Recollections.Keep(crew, subject, read);
        session!.Finish();
        return read;
    }

    private async Task<T> OverAsync<T>(Func<PreparedConnection, Task<T>> act, CancellationToken cancellationToken)
    {
        try
        {
            var connection = await _connections.TakeForReadingAsync(cancellationToken);
            var isSound = true;
            try
            {
                return await act(connection);
            }
            catch (SqliteException)
            {
                // One that failed may fail again.
                isSound = false;
                throw;
            }
            finally
            {
                await (isSound ? _connections.GiveBackAsync(connection) : connection.DisposeAsync().AsTask());
            }
        }
        catch (SqliteException fault) when (StorageFaults.IsOutside(fault))
        {
            throw StorageFaults.Of(fault, Path);
        }
    }
}
