using System.Diagnostics;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>Limits that the platform names, and what waits for them.</summary>
public sealed class RestLimitTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_Limited_WaitsTheLongerOfHeaderAndBodyThenSucceeds()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, CannedReply.Limited(0.3) with
        {
            Headers = new Dictionary<string, string> { ["Retry-After"] = "0.65", ["X-RateLimit-Scope"] = "user" },
        });

        var watch = Stopwatch.StartNew();
        await stage.PostAsync("n-1", Limit);
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(0.6), TimeSpan.FromSeconds(5));
        Assert.Equal(2, stage.Count(RestStage.Messages));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_BucketLimited_HoldsItsBucketButNoOther()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, CannedReply.Limited(1));
        var limited = stage.PostAsync("n-1", Limit);
        await stage.Server.NextRequestAsync(RestStage.Messages, Limit);

        await stage.Api.GetApplicationAsync(Limit);
        Assert.False(limited.IsCompleted);
        await limited;
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_GloballyLimited_HoldsEverythingButAnswersToPeople()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, CannedReply.Limited(1.2, global: true));
        var limited = stage.PostAsync("n-1", Limit);
        await stage.Server.NextRequestAsync(RestStage.Messages, Limit);
        Assert.NotSame(limited, await Task.WhenAny(limited, stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit)));

        var watch = Stopwatch.StartNew();
        await stage.Api.GetApplicationAsync(Limit);
        await limited;
        Assert.True(watch.Elapsed > TimeSpan.FromSeconds(0.5), $"went through after {watch.Elapsed}");
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_LimitLongerThanTheCallCanWait_SaysSoAtOnce()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, CannedReply.Limited(40));

        var limited = await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.InRange(limited.Wait!.Value.TotalSeconds, 40, 41);
    }

    [Theory(Timeout = 20_000)]
    [InlineData(429)]
    [InlineData(403)]
    public async Task SendAsync_BlockedAtTheEdge_PausesEverythingButAnswersToPeople(int status)
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", CannedReply.WebPage(status));
        await Assert.ThrowsAnyAsync<DiscordApiException>(() => stage.Api.GetApplicationAsync(Limit));

        var paused = await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.InRange(paused.Wait!.Value.TotalSeconds, 55, 61);
        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);
    }
}
