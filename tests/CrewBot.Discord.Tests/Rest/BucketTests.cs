using CrewBot.Discord.Rest;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Rest;

public sealed class BucketTests : IDisposable
{
    private static readonly TimeSpan Patient = TimeSpan.FromMinutes(1);

    private readonly WatchedClock _clock = new();
    private readonly Bucket _bucket;

    public BucketTests() => _bucket = new Bucket(_clock);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _bucket.Dispose();

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_LimitUnknown_LetsOnePassAtATime()
    {
        await EnterAsync();
        var second = EnterAsync();
        Assert.False(second.IsCompleted);

        _bucket.Leave(Headers(limit: 5, left: 4, resetAfter: 1));
        await second;
        await EnterAsync();
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_AnswersGaveNoLimit_LetsAllPass()
    {
        await EnterAsync();
        _bucket.Leave(default(RateLimitHeaders));
        for (var call = 0; call < 100; call++)
        {
            await EnterAsync();
        }
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_NoneLeft_WaitsForTheWindowToEndByTheMonotonicClock()
    {
        await EnterAsync();
        _bucket.Leave(Headers(limit: 2, left: 0, resetAfter: 5));

        var next = EnterAsync();
        await _clock.PassAsync(TimeSpan.FromSeconds(5), Limit);
        await next;
        await EnterAsync();
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_AnswersOvertakeEachOther_NeverExceedsTheLimit()
    {
        await EnterAsync();
        _bucket.Leave(Headers(limit: 3, left: 2, resetAfter: 5));
        await EnterAsync();
        await EnterAsync();
        _bucket.Leave(Headers(limit: 3, left: 0, resetAfter: 5));
        _bucket.Leave(Headers(limit: 3, left: 1, resetAfter: 5)); // the earlier one, arriving later

        Assert.False(EnterAsync().IsCompleted);
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_CallFailedWithoutAnAnswer_GivesThePlaceBack()
    {
        await EnterAsync();
        _bucket.Leave(answer: null);
        await EnterAsync();
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_Paused_WaitsEvenThoughTheHeadersSayPlacesAreLeft()
    {
        await EnterAsync();
        _bucket.Pause(TimeSpan.FromSeconds(40));
        _bucket.Leave(Headers(limit: 6, left: 5, resetAfter: 1));

        var next = EnterAsync();
        await _clock.PassAsync(TimeSpan.FromSeconds(40), Limit);
        await next;
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_WaitLongerThanThePatience_SaysHowLong()
    {
        _bucket.Pause(TimeSpan.FromSeconds(90));
        Assert.Equal(TimeSpan.FromSeconds(90), await _bucket.EnterAsync(Patient, Limit));
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_SeveralWait_PassInTheirOrder()
    {
        await EnterAsync();
        _bucket.Leave(Headers(limit: 1, left: 0, resetAfter: 1));
        var order = new List<int>();
        var waiting = Enumerable.Range(0, 3).Select(async number =>
        {
            await EnterAsync();
            lock (order)
            {
                order.Add(number);
            }

            _bucket.Leave(Headers(limit: 1, left: 0, resetAfter: 1));
        }).ToArray();

        for (var window = 0; window < 3; window++)
        {
            await _clock.PassAsync(TimeSpan.FromSeconds(1), Limit);
        }

        await Task.WhenAll(waiting);
        Assert.Equal([0, 1, 2], order);
    }

    private async Task EnterAsync() => Assert.Equal(TimeSpan.Zero, await _bucket.EnterAsync(Patient, Limit));

    private static RateLimitHeaders Headers(int limit, int left, double resetAfter) =>
        new("b", limit, left, TimeSpan.FromSeconds(resetAfter), RetryAfter: null, Global: false, Shared: false);
}
