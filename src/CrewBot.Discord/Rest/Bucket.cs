namespace CrewBot.Discord.Rest;

/// <summary>
/// One bucket of requests that share a limit. Until an answer has told the limit, one request passes at a time;
/// an answer without a limit opens the bucket. Those who wait pass in the order in which they came.
/// </summary>
internal sealed class Bucket(TimeProvider clock) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _turn = new(1, 1);
    private TaskCompletionSource _changed = NewSignal();
    private int _limit = 1;
    private int _left = 1;
    private int _inFlight;
    private long? _resetAt;
    private long _pausedUntil;
    private long _lastUsed = clock.GetTimestamp();

    /// <summary>Waits for a place.</summary>
    /// <returns>Zero when the place is taken, or the wait that would be longer than <paramref name="patience"/>.</returns>
    public async ValueTask<TimeSpan> EnterAsync(TimeSpan patience, CancellationToken cancellationToken)
    {
        await _turn.WaitAsync(cancellationToken);
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
            _turn.Release();
        }
    }

    /// <summary>Gives the place back, with what the answer said; null when no answer came.</summary>
    public void Leave(RateLimitHeaders? answer)
    {
        lock (_gate)
        {
            _inFlight--;
            if (answer is { } headers)
            {
                Learn(headers);
            }
            else if (_left < _limit)
            {
                _left++;
            }

            Signal();
        }
    }

    public void Pause(TimeSpan time)
    {
        lock (_gate)
        {
            _pausedUntil = Math.Max(_pausedUntil, After(time));
            Signal();
        }
    }

    public bool IdleFor(TimeSpan time)
    {
        lock (_gate)
        {
            var now = clock.GetTimestamp();
            return _inFlight == 0 && now >= _pausedUntil && (_resetAt is null || now >= _resetAt)
                && clock.GetElapsedTime(_lastUsed) >= time;
        }
    }

    public void Dispose() => _turn.Dispose();

    private static TaskCompletionSource NewSignal() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private (bool Taken, TimeSpan? Wait, Task Signal) TryTake()
    {
        lock (_gate)
        {
            var now = clock.GetTimestamp();
            _lastUsed = now;
            if (now < _pausedUntil)
            {
                return (false, clock.GetElapsedTime(now, _pausedUntil), _changed.Task);
            }

            if (_resetAt is { } reset && now >= reset)
            {
                _left = _limit - _inFlight;
                _resetAt = null;
            }

            if (_left > 0)
            {
                _left--;
                _inFlight++;
                return (true, null, _changed.Task);
            }

            return (false, _resetAt is null ? null : clock.GetElapsedTime(now, _resetAt.Value), _changed.Task);
        }
    }

    private void Learn(RateLimitHeaders headers)
    {
        if (!headers.Known)
        {
            _limit = int.MaxValue;
            _left = int.MaxValue;
            return;
        }

        _limit = Math.Max(1, headers.Limit!.Value);
        if (_resetAt is null)
        {
            _left = headers.Remaining!.Value - _inFlight;
            _resetAt = After(headers.ResetAfter!.Value);
        }
        else
        {
            // Answers overtake each other: within one window the lowest figure is the true one.
            _left = Math.Min(_left, headers.Remaining!.Value);
        }
    }

    private long After(TimeSpan time) =>
        clock.GetTimestamp() + (long)(time.TotalSeconds * clock.TimestampFrequency);

    private void Signal()
    {
        _changed.TrySetResult();
        _changed = NewSignal();
    }
}
