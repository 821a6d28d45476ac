using System.Collections.Concurrent;
using CrewBot.Storage.Connections;
using Microsoft.Extensions.Logging;

namespace CrewBot.Storage.Outbox;

/// <summary>
/// Brings posts to their readers as they fall due: at least once, in order in each place, with growing pauses after
/// failures. Places go on beside each other; one that fails holds up no other.
/// </summary>
public sealed class PostPump(Database database, IPostSender sender, TimeProvider clock, ILogger<PostPump> log)
{
    /// <summary>After so many attempts in vain a post is given up: with the pauses below, after about two hours.</summary>
    public const int MostAttempts = 30;

    private static readonly TimeSpan LongestPause = TimeSpan.FromMinutes(5);

    // Another process may have said something in the same file, which rings no bell here.
    private static readonly TimeSpan LongestRest = TimeSpan.FromSeconds(15);

    private readonly ConcurrentDictionary<(string Crew, string Place), Task> _busy = new();

    /// <summary>How long to wait after a number of attempts in vain: 1, 2, 4 … seconds, at most 5 minutes.</summary>
    public static TimeSpan PauseAfter(long attempts) =>
        attempts > 8 ? LongestPause : TimeSpan.FromSeconds(Math.Min(LongestPause.TotalSeconds, Math.Pow(2, attempts - 1)));

    /// <summary>Works until it is stopped; what is being sent at that moment is sent again by the next start.</summary>
    public async Task RunAsync(CancellationToken cancellationToken)
    {
        try
        {
            while (true)
            {
                var rest = await TurnAsync(cancellationToken);
                await database.PostBell.WaitAsync(rest, clock, cancellationToken);
            }
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            await Task.WhenAll(_busy.Values);
        }
    }

    /// <summary>Starts on every place where something is due.</summary>
    /// <returns>How long there is nothing else to do, unless the bell rings.</returns>
    private async Task<TimeSpan> TurnAsync(CancellationToken cancellationToken)
    {
        try
        {
            return Turn(await database.AgendaAsync(cancellationToken), cancellationToken);
        }
        catch (StorageException fault)
        {
            log.LogWarning("Posts wait: {Reason}", fault.Message);
            return LongestRest;
        }
    }

    private TimeSpan Turn(IReadOnlyList<PlaceDue> agenda, CancellationToken cancellationToken)
    {
        var rest = LongestRest;
        var now = clock.GetUtcNow();
        foreach (var (crew, place, nextAt) in agenda)
        {
            if (_busy.ContainsKey((crew, place)) || !sender.Reaches(crew, place))
            {
                continue;
            }

            if (nextAt <= now)
            {
                var started = new TaskCompletionSource();
                _busy[(crew, place)] = started.Task;
                _ = ServeAsync(crew, place, started, cancellationToken);
            }
            else if (nextAt - now < rest)
            {
                rest = nextAt - now;
            }
        }

        return rest;
    }

    private async Task ServeAsync(string crew, string place, TaskCompletionSource served, CancellationToken cancellationToken)
    {
        try
        {
            while (!cancellationToken.IsCancellationRequested && await FirstDueAsync(crew, place) is { } post)
            {
                await BringAsync(crew, post, cancellationToken);
            }
        }
        catch (Exception) when (cancellationToken.IsCancellationRequested)
        {
            // What was not noted as shown is tried again by the next start.
        }
#pragma warning disable CA1031 // Whatever it is, it must neither end the process nor be tried again without a pause.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            log.LogWarning("Posts to {Place} wait: {Reason}", place, fault.Message);
            await Task.Delay(LongestRest, clock, cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
        finally
        {
            _busy.TryRemove((crew, place), out _);
            served.SetResult();
            database.PostBell.Ring();
        }
    }

    private Task<Post?> FirstDueAsync(string crew, string place) => database.ReadAsync(
        crew, session => new PostRepository(session).FirstDueAsync(place, clock.GetUtcNow()), CancellationToken.None);

    private async Task BringAsync(string crew, Post post, CancellationToken cancellationToken)
    {
        try
        {
            await (post switch
            {
                _ when post.IsStale(clock.GetUtcNow()) => NoteAsync(crew, posts => posts.RemoveAsync(post)),
                { Message: null } => ShowAsync(crew, post, cancellationToken),
                { IsWithdrawn: true, Message: { } message } => RemoveAsync(crew, post, message, cancellationToken),
                { Message: { } message } => EditAsync(crew, post, message, cancellationToken),
            });
        }
        catch (Exception fault) when (fault is not StorageException && !cancellationToken.IsCancellationRequested)
        {
            await PutOffAsync(crew, post, fault);
        }
    }

    private async Task ShowAsync(string crew, Post post, CancellationToken cancellationToken)
    {
        // After a fall nobody knows whether this was shown: the nonce makes the platform answer with what it showed then,
        // and what it was asked to show then is what its readers see.
        await NoteAsync(crew, posts => posts.TriedAsync(post));
        var message = await sender.ShowAsync(crew, post, cancellationToken);
        await NoteAsync(crew, posts => posts.ShownAsync(post, message, post.TriedRevision ?? post.Revision, clock.GetUtcNow()));
    }

    private async Task EditAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken)
    {
        var stands = await sender.EditAsync(crew, post, message, cancellationToken);
        await NoteAsync(crew, posts => posts.ShownAsync(post, stands, post.Revision, clock.GetUtcNow()));
    }

    private async Task RemoveAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken)
    {
        await sender.RemoveAsync(crew, post, message, cancellationToken);
        await NoteAsync(crew, posts => posts.RemoveAsync(post));
    }

    private async Task PutOffAsync(string crew, Post post, Exception fault)
    {
        var attempts = post.Attempts + 1;
        if (fault is PostRefusedException || attempts >= MostAttempts)
        {
            log.LogWarning("Post {Key} to {Place} was given up: {Reason}", post.Key, post.Place, fault.Message);
            await NoteAsync(crew, posts => posts.GiveUpAsync(post, fault.Message, clock.GetUtcNow()));
        }
        else
        {
            await NoteAsync(crew, posts => posts.PutOffAsync(post, clock.GetUtcNow() + PauseAfter(attempts), fault.Message));
        }
    }

    // What was sent is noted even when the process is asked to stop meanwhile.
    private Task NoteAsync(string crew, Func<PostRepository, Task> note) =>
        database.WriteAsync(crew, session => note(new PostRepository(session)), CancellationToken.None);
}
