using System.Diagnostics;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>First answers to people, which have three seconds.</summary>
public sealed class InteractionAnswerTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_FirstAttemptArrivedButItsAnswerDidNot_CountsAsAnswered()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Callback, new CannedReply(0) { CarriedOut = true, Cut = true });

        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);
        Assert.Equal(2, stage.Count(RestStage.Callback));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_AnsweredElsewhere_IsRefusedOnce()
    {
        await using var stage = await RestStage.OpenAsync();
        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);

        var refused = await Assert.ThrowsAsync<DiscordApiException>(
            () => stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit));
        Assert.Equal(40060, refused.Code);
        Assert.Equal(2, stage.Count(RestStage.Callback));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_ServerNeverAnswers_IsTriedAgainInsideTheThreeSeconds()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Callback, new CannedReply(0) { Silent = true });

        var watch = Stopwatch.StartNew();
        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(1.4), TimeSpan.FromSeconds(2.9));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_ServerStaysSilent_GivesUpWhenTheTimeIsOver()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Callback, new CannedReply(0) { Silent = true }, times: 20);

        var watch = Stopwatch.StartNew();
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit));
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(2.8), TimeSpan.FromSeconds(4.5));
    }
}
