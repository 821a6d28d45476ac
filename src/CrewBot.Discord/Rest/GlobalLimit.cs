namespace CrewBot.Discord.Rest;

/// <summary>The limit over all routes: fifty requests a second, and the pauses that answers ask for.</summary>
internal sealed class GlobalLimit(TimeProvider clock)
{
    /// <summary>Published as 50 requests a second for each bot.</summary>
    public const int RequestsPerSecond = 50;

    private readonly Lock gate = new();
    private readonly long[] passedAt = new long[RequestsPerSecond];
    private int next;
    private long passes;
    private long pausedUntil = long.MinValue;

    /// <summary>Passes at once (zero) or says how long to wait before asking again.</summary>
    public TimeSpan TryPass()
    {
        lock (gate)
        {
            var now = clock.GetTimestamp();
            var free = passes < RequestsPerSecond ? now : passedAt[next] + clock.TimestampFrequency;
            free = Math.Max(free, pausedUntil);
            if (free > now)
            {
                return clock.GetElapsedTime(now, free);
            }

            passedAt[next] = now;
            next = (next + 1) % RequestsPerSecond;
            passes++;
            return TimeSpan.Zero;
        }
    }

    public void Pause(TimeSpan time)
    {
        lock (gate)
        {
            pausedUntil = Math.Max(
                pausedUntil, clock.GetTimestamp() + (long)(time.TotalSeconds * clock.TimestampFrequency));
        }
    }
}
