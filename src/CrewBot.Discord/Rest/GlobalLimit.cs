namespace CrewBot.Discord.Rest;

/// <summary>
/// The limit over all routes: fifty requests a second, and the pauses that answers ask for. The platform counts when requests
/// arrive, and some travel faster than others: hence a second with some room.
/// </summary>
internal sealed class GlobalLimit(TimeProvider clock)
{
    /// <summary>Published as 50 requests a second for each bot.</summary>
    public const int RequestsPerSecond = 50;

    /// <summary>In which that many pass.</summary>
    public static readonly TimeSpan Window = TimeSpan.FromMilliseconds(1050);

    private readonly Lock _gate = new();
    private readonly long[] _passedAt = new long[RequestsPerSecond];
    private int _next;
    private long _passes;
    private long _pausedUntil = long.MinValue;

    /// <summary>Passes at once (zero) or says how long to wait before asking again.</summary>
    public TimeSpan TryPass()
    {
        lock (_gate)
        {
            var now = clock.GetTimestamp();
            var free = _passes < RequestsPerSecond ? now : _passedAt[_next] + (long)(Window.TotalSeconds * clock.TimestampFrequency);
            free = Math.Max(free, _pausedUntil);
            if (free > now)
            {
                return clock.GetElapsedTime(now, free);
            }

            _passedAt[_next] = now;
            _next = (_next + 1) % RequestsPerSecond;
            _passes++;
            return TimeSpan.Zero;
        }
    }

    public void Pause(TimeSpan time)
    {
        lock (_gate)
        {
            _pausedUntil = Math.Max(
                _pausedUntil, clock.GetTimestamp() + (long)(time.TotalSeconds * clock.TimestampFrequency));
        }
    }
}
