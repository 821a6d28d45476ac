namespace CrewBot.Discord.Rest;

/// <summary>
/// One bucket of requests that share a limit. Until an answer has told the limit, one request passes at a time;
/// an answer without a limit opens the bucket. Those who wait pass in the order in which they came.
/// </summary>
internal sealed class Bucket(TimeProvider clock) : IDisposable
{
    private readonly Lock gate = new();
    private readonly SemaphoreSlim turn = new(1, 1);
    private TaskCompletionSource changed = NewSignal();
    private int limit = 1;
    private int left = 1;
    private int inFlight;
    private long? resetAt;
    private long pausedUntil;
    private long lastUsed = clock.GetTimestamp();

    /// <summary>Waits for a place.</summary>
    /// <returns>Zero when the place is taken, or the wait that would be longer than <paramref name="patience"/>.</returns>
    public async ValueTask<TimeSpan> EnterAsync(TimeSpan patience, CancellationToken cancellationToken)
    {
        await turn.WaitAsync(cancellationToken);
        try
        {
            while (true)
            {
                var (taken, wait, signal) = TryTake();
                if (taken)
                {
                    return TimeSpan.Zero;
                }

                if (wait is not { } time)
                {
                    await signal.WaitAsync(cancellationToken);
                    continue;
                }

                if (time > patience)
                {
                    return time;
                }

                await Task.Delay(time, clock, cancellationToken);
            }
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Gives the place back, with what the answer said; null when no answer came.</summary>
    public void Leave(RateLimitHeaders? answer)
    {
        lock (gate)
        {
            inFlight--;
            if (answer is { } headers)
            {
                Learn(headers);
            }
            else if (left < limit)
            {
                left++;
            }

            Signal();
        }
    }

    public void Pause(TimeSpan time)
    {
        lock (gate)
        {
            pausedUntil = Math.Max(pausedUntil, After(time));
            Signal();
        }
    }

    public bool IdleFor(TimeSpan time)
    {
        lock (gate)
        {
            var now = clock.GetTimestamp();
            return inFlight == 0 && now >= pausedUntil && (resetAt is null || now >= resetAt)
                && clock.GetElapsedTime(lastUsed) >= time;
        }
    }

    public void Dispose() => turn.Dispose();

    private static TaskCompletionSource NewSignal() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private (bool Taken, TimeSpan? Wait, Task Signal) TryTake()
    {
        lock (gate)
        {
            var now = clock.GetTimestamp();
            lastUsed = now;
            if (now < pausedUntil)
            {
                return (false, clock.GetElapsedTime(now, pausedUntil), changed.Task);
            }

            if (resetAt is { } reset && now >= reset)
            {
                left = limit - inFlight;
                resetAt = null;
            }

            if (left > 0)
            {
                left--;
                inFlight++;
                return (true, null, changed.Task);
            }

            return (false, resetAt is null ? null : clock.GetElapsedTime(now, resetAt.Value), changed.Task);
        }
    }

    private void Learn(RateLimitHeaders headers)
    {
        if (!headers.Known)
        {
            limit = int.MaxValue;
            left = int.MaxValue;
            return;
        }

        limit = Math.Max(1, headers.Limit!.Value);
        if (resetAt is null)
        {
            left = headers.Remaining!.Value - inFlight;
            resetAt = After(headers.ResetAfter!.Value);
        }
        else
        {
            // Answers overtake each other: within one window the lowest figure is the true one.
            left = Math.Min(left, headers.Remaining!.Value);
        }
    }

    private long After(TimeSpan time) =>
        clock.GetTimestamp() + (long)(time.TotalSeconds * clock.TimestampFrequency);

    private void Signal()
    {
        changed.TrySetResult();
        changed = NewSignal();
    }
}
