using CrewBot.Discord.Gateway;

namespace CrewBot.Discord.Tests.Gateway;

public sealed class BackoffTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 4)]
    [InlineData(7, 60)]
    [InlineData(1_000_000, 60)]
    public void Connect_FullJitter_DoublesUpToAMinute(int attempts, double seconds)
    {
        Assert.Equal(TimeSpan.FromSeconds(seconds), Backoff.Connect(attempts, random: 1));
        Assert.Equal(TimeSpan.Zero, Backoff.Connect(attempts, random: 0));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 5)]
    [InlineData(2, 10)]
    [InlineData(8, 600)]
    [InlineData(1_000_000, 600)]
    public void Identify_FullJitter_DoublesUpToTenMinutes(int attempts, double seconds)
    {
        Assert.Equal(TimeSpan.FromSeconds(seconds), Backoff.Identify(attempts, random: 1));
    }

    /// <summary>The platform resets the token of a bot that starts more than 1,000 sessions in a day.</summary>
    [Fact]
    public void ReconnectPace_EverySessionDiesAtOnceForADay_StartsFewerThanFourHundred()
    {
        var random = new Random(4);
        var pace = new ReconnectPace();
        var starts = 0;
        for (var elapsed = TimeSpan.Zero; elapsed < TimeSpan.FromDays(1); starts++)
        {
            pace.CountIdentify();
            pace.Record(ConnectionStage.Active, activeFor: TimeSpan.Zero);
            elapsed += pace.Next(identifying: true, random.NextDouble());
        }

        Assert.InRange(starts, 100, 400);
    }

    [Fact]
    public void ReconnectPace_SessionLivedAMinute_StartsOverWithoutDelay()
    {
        var pace = new ReconnectPace();
        for (var attempt = 0; attempt < 5; attempt++)
        {
            pace.Record(ConnectionStage.Connecting, activeFor: null);
            pace.Next(identifying: false, random: 1);
        }

        Assert.True(pace.Next(identifying: false, random: 1) > TimeSpan.FromSeconds(10));
        pace.Record(ConnectionStage.Active, TimeSpan.FromSeconds(61));
        Assert.Equal(TimeSpan.Zero, pace.Next(identifying: false, random: 1));
    }

    [Fact]
    public void ReconnectPace_ThreeResumesFail_GivesTheSessionUp()
    {
        var pace = new ReconnectPace();
        pace.Record(ConnectionStage.Resuming, activeFor: null);
        pace.Record(ConnectionStage.Resuming, activeFor: null);
        Assert.False(pace.SessionIsLost);
        pace.Record(ConnectionStage.Resuming, activeFor: null);
        Assert.True(pace.SessionIsLost);
    }

    [Fact]
    public void ReconnectPace_NetworkIsAwayWhileResuming_KeepsTheSession()
    {
        var pace = new ReconnectPace();
        for (var attempt = 0; attempt < 100; attempt++)
        {
            pace.Record(ConnectionStage.Connecting, activeFor: null);
        }

        Assert.False(pace.SessionIsLost);
        Assert.True(pace.ResumePlaceFailed);
    }
}
