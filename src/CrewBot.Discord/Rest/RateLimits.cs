using System.Collections.Concurrent;

namespace CrewBot.Discord.Rest;

/// <summary>
/// All buckets and the global limit. A bucket is known first by its route, then by the name that an answer gave it,
/// always together with the top-level resource.
/// </summary>
internal sealed class RateLimits(TimeProvider clock)
{
    private const int SweepEvery = 512;
    private static readonly TimeSpan KeepIdle = TimeSpan.FromMinutes(1);

    private readonly ConcurrentDictionary<(string Name, string Major), Bucket> _buckets = new();
    private readonly ConcurrentDictionary<string, string> _names = new();
    private readonly GlobalLimit _global = new(clock);
    private int _entered;

    public int BucketCount => _buckets.Count;

    /// <summary>Waits until the route may be called.</summary>
    /// <returns>The place in its bucket, to be left with the answer; null where the route has none.</returns>
    /// <exception cref="DiscordApiException">The wait would be longer than <paramref name="patience"/>.</exception>
    public async ValueTask<Bucket?> EnterAsync(Route route, TimeSpan patience, CancellationToken cancellationToken)
    {
        if (route.Unbucketed)
        {
            return null;
        }

        var bucket = Find(route);
        var tooLong = await bucket.EnterAsync(patience, cancellationToken);
        if (tooLong > TimeSpan.Zero)
        {
            throw DiscordApiException.Limited(route, tooLong);
        }

        try
        {
            await PassGlobalAsync(route, patience, cancellationToken);
        }
        catch
        {
            bucket.Leave(answer: null);
            throw;
        }

        return bucket;
    }

    /// <summary>Remembers the name that an answer gave to the route's bucket.</summary>
    public void Name(Route route, Bucket bucket, string? name)
    {
        if (name is not null && _names.TryAdd(route.ToString(), name))
        {
            _buckets.TryAdd((name, route.Major), bucket);
        }
    }

    public void PauseEverything(TimeSpan time) => _global.Pause(time);

    private async ValueTask PassGlobalAsync(Route route, TimeSpan patience, CancellationToken cancellationToken)
    {
        while (!route.ByInteractionToken && _global.TryPass() is var wait && wait > TimeSpan.Zero)
        {
            if (wait > patience)
            {
                throw DiscordApiException.Limited(route, wait);
            }

            await Task.Delay(wait, clock, cancellationToken);
        }
    }

    private Bucket Find(Route route)
    {
        if (Interlocked.Increment(ref _entered) % SweepEvery == 0)
        {
            Sweep();
        }

        var template = route.ToString();
        var key = (_names.GetValueOrDefault(template, template), route.Major);
        return _buckets.GetOrAdd(key, static (_, clock) => new Bucket(clock), clock);
    }

    private void Sweep()
    {
        foreach (var (key, bucket) in _buckets)
        {
            if (bucket.IdleFor(KeepIdle))
            {
                _buckets.TryRemove(key, out _);
            }
        }
    }
}
