using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>Which calls are tried again, and that none acts twice.</summary>
public sealed class RepetitionTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Theory(Timeout = 20_000)]
    [InlineData(500)]
    [InlineData(502)]
    [InlineData(503)]
    [InlineData(504)]
    public async Task SendAsync_ServerFaultsOnARepeatableCall_AreTriedAgain(int status)
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", new CannedReply(status), times: 2);

        Assert.Equal("crewbot", (await stage.Api.GetApplicationAsync(Limit)).Name);
        Assert.Equal(3, stage.Count("applications"));
    }

    [Theory(Timeout = 20_000)]
    [InlineData(500, 1)]
    [InlineData(504, 1)]
    [InlineData(502, 2)]
    [InlineData(503, 2)]
    public async Task SendAsync_CallThatWouldActTwice_IsRepeatedOnlyIfItCertainlyDidNotRun(int status, int requests)
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("webhooks", new CannedReply(status));

        var fault = await Record.ExceptionAsync(
            () => stage.Api.FollowUpAsync(RestStage.Application, "token-1", RestStage.Text("x"), [], Limit));
        Assert.Equal(requests, stage.Count("webhooks"));
        Assert.Equal(requests == 1, fault is DiscordApiException);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_ServerSilentOnAnOrdinaryCall_TimesOutAndTriesAgain()
    {
        var clock = new WatchedClock();
        await using var stage = await RestStage.OpenAsync(clock);
        stage.Server.Faults.Next("applications", new CannedReply(0) { Silent = true });

        var call = stage.Api.GetApplicationAsync(Limit);
        await stage.Server.NextRequestAsync("applications", Limit);
        await clock.PassAsync(TimeSpan.FromSeconds(10), Limit);
        await clock.TimerAsync(due => due > TimeSpan.Zero && due <= TimeSpan.FromSeconds(4), Limit);
        clock.Advance(TimeSpan.FromSeconds(4));
        Assert.Equal("crewbot", (await call).Name);
    }

    [Fact(Timeout = 20_000)]
    public async Task CreateMessageAsync_CarriedOutThenCut_MakesExactlyOneMessage()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, new CannedReply(0) { CarriedOut = true, Cut = true });

        await stage.PostAsync("relay-42", Limit);
        Assert.Equal(2, stage.Count(RestStage.Messages));
        Assert.Equal(1, stage.Server.MessagesCreated);
    }

    [Fact(Timeout = 20_000)]
    public async Task DeleteMessageAsync_RepeatedAfterItWorked_IsDone()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, new CannedReply(0) { CarriedOut = true, Cut = true });
        stage.Server.Faults.Next(RestStage.Messages, CannedReply.Refusal(404, 10008, "Unknown Message"));

        await stage.Api.DeleteMessageAsync(RestStage.Channel, new Snowflake(5), Limit);

        Assert.Equal(2, stage.Count(RestStage.Messages));
    }
}
