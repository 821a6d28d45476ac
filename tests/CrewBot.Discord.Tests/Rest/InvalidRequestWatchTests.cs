using CrewBot.Discord.Rest;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>Published: 10,000 answers of 401, 403 or 429 in ten minutes ban the address for a time.</summary>
public sealed class InvalidRequestWatchTests
{
    private static readonly Route Ordinary = Routes.CurrentApplication;
    private static readonly Route ToAPerson = Routes.Callback(new Snowflake(1), "t");

    private readonly WatchedClock _clock = new();

    [Fact]
    public void Allows_AThousandRefusals_KeepsOnlyAnswersToPeopleGoing()
    {
        var watch = Counted(1_000);
        Assert.False(watch.Allows(Ordinary));
        Assert.True(watch.Allows(ToAPerson));
    }

    [Fact]
    public void Allows_NineThousandRefusals_StopsEverything()
    {
        Assert.False(Counted(9_000).Allows(ToAPerson));
    }

    [Fact]
    public void Allows_TenMinutesLater_StartsAfresh()
    {
        var watch = Counted(9_000);
        _clock.Advance(TimeSpan.FromMinutes(9.9));
        Assert.Equal(9_000, watch.InTheLastTenMinutes);
        _clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(0, watch.InTheLastTenMinutes);
        Assert.True(watch.Allows(Ordinary));
    }

    [Fact]
    public void InTheLastTenMinutes_SteadyRefusals_CountsAWindowAndForgetsWhatIsOlder()
    {
        var watch = new InvalidRequestWatch(_clock);
        for (var minute = 0; minute < 60; minute++)
        {
            watch.Count();
            _clock.Advance(TimeSpan.FromMinutes(1));
        }

        Assert.InRange(watch.InTheLastTenMinutes, 10, 11);
    }

    private InvalidRequestWatch Counted(int refusals)
    {
        var watch = new InvalidRequestWatch(_clock);
        for (var refusal = 0; refusal < refusals; refusal++)
        {
            watch.Count();
        }

        return watch;
    }
}
