using CrewBot.Discord.Rest;
using CrewBot.Discord.Wire;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// Takes interactions and messages from the receive loop and has them handled elsewhere; the loop never waits. At most
/// <see cref="MostOpen"/> are in work. Beyond that whoever acted is told to try again; beyond <see cref="MostRefusals"/> of
/// those at a time an interaction is dropped, and the platform itself tells the asker that nobody answered. A message is
/// dropped at once: a person can write it again.
/// </summary>
internal sealed class EventIntake(IEventHandler handler, ILogger<EventIntake> log) : IDisposable
{
    public const int MostOpen = 512;
    public const int MostRefusals = 64;

    private readonly CancellationTokenSource _abandon = new();
    private readonly TaskCompletionSource _drained = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private int _open;
    private int _refusals;
    private long _dropped;
    private volatile bool _closing;

    public int Open => Volatile.Read(ref _open);

    public long Dropped => Interlocked.Read(ref _dropped);

    public void Offer(ReceivedInteraction received)
    {
        if (!TryRun(() => handler.HandleAsync(received, _abandon.Token), received.Interaction))
        {
            Refuse(received);
        }
    }

    public void Offer(Message message)
    {
        if (!TryRun(() => handler.HandleAsync(message, _abandon.Token), message.Id))
        {
            Drop();
        }
    }

    /// <summary>Waits for what is in work, and gives up what takes longer.</summary>
    /// <returns>How many were given up.</returns>
    public async Task<int> DrainAsync(TimeSpan within, TimeProvider clock)
    {
        _closing = true;
        if (Open > 0)
        {
            await Task.WhenAny(_drained.Task, Task.Delay(within, clock));
        }

        var left = Open;
        await _abandon.CancelAsync();
        return left;
    }

    public void Dispose() => _abandon.Dispose();

    private bool TryRun(Func<Task> handle, object? what)
    {
        if (Interlocked.Increment(ref _open) > MostOpen)
        {
            LeaveOpen();
            return false;
        }

        _ = Task.Run(() => RunAsync(handle, what));
        return true;
    }

    private async Task RunAsync(Func<Task> handle, object? what)
    {
        try
        {
            await handle();
        }
        catch (DiscordApiException refused)
        {
            // A token that is too late, somebody who takes no messages: nobody's fault to throw about.
            log.LogWarning("Could not answer {Event}: {Reason}", what, refused.Message);
        }
        catch (OperationCanceledException) when (_abandon.IsCancellationRequested)
        {
            // Whoever drains says how many were given up.
        }
        catch (Exception fault)
        {
            // The edge of all handling: one event's fault must not touch the next.
            log.LogError(fault, "Failed to handle {Event}", what);
        }
        finally
        {
            LeaveOpen();
        }
    }

    private void LeaveOpen()
    {
        if (Interlocked.Decrement(ref _open) == 0 && _closing)
        {
            _drained.TrySetResult();
        }
    }

    private void Refuse(ReceivedInteraction received)
    {
        if (Interlocked.Increment(ref _refusals) > MostRefusals)
        {
            Interlocked.Decrement(ref _refusals);
            Drop();
            return;
        }

        _ = Task.Run(() => RefuseAsync(received));
    }

    // Said at the first, the second, the fourth, the eighth...
    private void Drop()
    {
        if (Interlocked.Increment(ref _dropped) is var count && (count & (count - 1)) == 0)
        {
            log.LogWarning("Too busy even to say so: {Count} events dropped so far", count);
        }
    }

    private async Task RefuseAsync(ReceivedInteraction received)
    {
        try
        {
            await handler.RefuseBusyAsync(received, _abandon.Token);
        }
        catch (Exception fault)
        {
            log.LogWarning("Could not tell that the bot is busy: {Reason}", fault.Message);
        }
        finally
        {
            Interlocked.Decrement(ref _refusals);
        }
    }
}
