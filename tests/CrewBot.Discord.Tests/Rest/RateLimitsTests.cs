using CrewBot.Discord.Rest;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Rest;

public sealed class RateLimitsTests
{
    private static readonly TimeSpan Patient = TimeSpan.FromMinutes(1);

    private readonly WatchedClock _clock = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_TwoRoutesOfOneNamedBucket_ShareIt()
    {
        var limits = new RateLimits(_clock);
        var edit = Routes.EditMessage(new Snowflake(1), new Snowflake(2));
        var delete = Routes.DeleteMessage(new Snowflake(1), new Snowflake(2));
        foreach (var route in (Route[])[edit, delete])
        {
            var bucket = await limits.EnterAsync(route, Patient, Limit);
            limits.Name(route, bucket!, "shared");
            bucket!.Leave(new RateLimitHeaders("shared", 5, 4, TimeSpan.FromSeconds(9), null, false, false));
        }

        var first = await limits.EnterAsync(edit, Patient, Limit);
        var second = await limits.EnterAsync(delete, Patient, Limit);
        Assert.Same(first, second);
    }

    [Fact(Timeout = 10_000)]
    public async Task EnterAsync_SameRouteOtherChannel_HasItsOwnBucket()
    {
        var limits = new RateLimits(_clock);
        var first = await limits.EnterAsync(Routes.CreateMessage(new Snowflake(1)), Patient, Limit);
        var second = await limits.EnterAsync(Routes.CreateMessage(new Snowflake(2)), Patient, Limit);
        Assert.NotSame(first, second);
    }

    [Fact(Timeout = 60_000)]
    public async Task EnterAsync_AHundredThousandInteractions_LeaveNoHeapOfBuckets()
    {
        var limits = new RateLimits(_clock);
        for (var number = 0; number < 100_000; number++)
        {
            var route = Routes.EditOriginal(new Snowflake(1), $"token-{number}");
            var bucket = await limits.EnterAsync(route, Patient, Limit);
            bucket!.Leave(new RateLimitHeaders("w", 5, 4, TimeSpan.FromSeconds(1), null, false, false));
            _clock.Advance(TimeSpan.FromSeconds(0.1));
        }

        Assert.InRange(limits.BucketCount, 0, 2_000);
    }
}
