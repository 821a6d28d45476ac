using CrewBot.Discord.Rest;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Rest;

public sealed class GlobalLimitTests
{
    private readonly WatchedClock _clock = new();

    // Published: 50 requests a second for each bot. The 50 ms more are this client's, for requests that travel at unlike speeds.
    [Fact]
    public void TryPass_MoreThanFiftyInASecond_HoldsTheRest()
    {
        var limit = new GlobalLimit(_clock);
        for (var call = 0; call < 50; call++)
        {
            Assert.Equal(TimeSpan.Zero, limit.TryPass());
            _clock.Advance(TimeSpan.FromMilliseconds(10));
        }

        Assert.Equal(TimeSpan.FromMilliseconds(550), limit.TryPass());
        _clock.Advance(TimeSpan.FromMilliseconds(550));
        Assert.Equal(TimeSpan.Zero, limit.TryPass());
        Assert.Equal(TimeSpan.FromMilliseconds(10), limit.TryPass());
    }

    [Fact]
    public void Pause_ShorterAfterLonger_KeepsTheLonger()
    {
        var limit = new GlobalLimit(_clock);
        limit.Pause(TimeSpan.FromSeconds(3));
        limit.Pause(TimeSpan.FromSeconds(1));

        Assert.Equal(TimeSpan.FromSeconds(3), limit.TryPass());
    }
}
