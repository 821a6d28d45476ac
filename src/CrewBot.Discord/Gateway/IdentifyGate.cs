using System.Collections.Concurrent;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// Lets shards start sessions at the pace that the platform allows: of those that share a key, one at a time, the next
/// five seconds after the outcome of the last is known.
/// </summary>
internal sealed class IdentifyGate(TimeProvider clock)
{
    private static readonly TimeSpan Spacing = TimeSpan.FromSeconds(5);

    private readonly ConcurrentDictionary<int, Lane> _lanes = new();

    /// <summary>Waits for the turn. Dispose of it once the start has succeeded or failed.</summary>
    public async Task<IDisposable> EnterAsync(ShardId shard, int maxConcurrency, CancellationToken cancellationToken)
    {
        var lane = _lanes.GetOrAdd(shard.Number % Math.Max(1, maxConcurrency), static _ => new Lane());
        await lane.Turn.WaitAsync(cancellationToken);
        try
        {
            var wait = lane.LastOutcome is { } last ? Spacing - clock.GetElapsedTime(last) : TimeSpan.Zero;
            if (wait > TimeSpan.Zero)
            {
                await Task.Delay(wait, clock, cancellationToken);
            }
        }
        catch (OperationCanceledException)
        {
            lane.Turn.Release();
            throw;
        }

        return new IdentifyTurn(lane, clock);
    }

    private sealed class Lane
    {
        public SemaphoreSlim Turn { get; } = new(1, 1);
        public long? LastOutcome { get; set; }
    }

    private sealed class IdentifyTurn(Lane lane, TimeProvider clock) : IDisposable
    {
        private int _left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref _left, 1) == 0)
            {
                lane.LastOutcome = clock.GetTimestamp();
                lane.Turn.Release();
            }
        }
    }
}
