using System.Net;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>What becomes of answers that are faults.</summary>
public sealed class RestFaultTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Theory(Timeout = 20_000)]
    [InlineData(200)]
    [InlineData(400)]
    [InlineData(403)]
    [InlineData(404)]
    public async Task SendAsync_WebPageInsteadOfJson_IsReportedByItsBeginning(int status)
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", CannedReply.WebPage(status));

        var fault = await Assert.ThrowsAsync<DiscordApiException>(() => stage.Api.GetApplicationAsync(Limit));
        Assert.Equal((HttpStatusCode)status, fault.Status);
        Assert.Contains("The edge says no.", fault.Message, StringComparison.Ordinal);
    }

    [Theory(Timeout = 20_000)]
    [InlineData("""{"id":"1","na""")]
    [InlineData("null")]
    [InlineData("")]
    [InlineData("[]")]
    public async Task SendAsync_SuccessWithABrokenBody_IsAnOrdinaryFailure(string body)
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", new CannedReply(200) { Body = body });

        await Assert.ThrowsAsync<DiscordApiException>(() => stage.Api.GetApplicationAsync(Limit));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_Refused_ShowsTheFlattenedFaultTree()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, new CannedReply(400)
        {
            Body = """
                {"code":50035,"message":"Invalid Form Body","errors":{"embeds":{"0":{"title":{"_errors":
                [{"code":"BASE_TYPE_MAX_LENGTH","message":"Must be 256 or fewer in length."}]}}}}}
                """,
        });

        var fault = await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.Equal(50035, fault.Code);
        Assert.Contains(
            "embeds[0].title: BASE_TYPE_MAX_LENGTH Must be 256 or fewer in length.",
            fault.Message,
            StringComparison.Ordinal);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_TokenRefused_StopsEverythingThatCarriesIt()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", CannedReply.Refusal(401, 0, "401: Unauthorized"));
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.Api.GetApplicationAsync(Limit));

        Assert.True(stage.Api.TokenRefused.IsCancellationRequested);
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.Equal(0, stage.Count(RestStage.Messages));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_InteractionTokenRefused_DoesNotDoubtTheBotToken()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("webhooks", CannedReply.Refusal(401, 50027, "Invalid Webhook Token"));
        await Assert.ThrowsAsync<DiscordApiException>(
            () => stage.Api.EditOriginalAsync(RestStage.Application, "late", RestStage.Text("x"), [], Limit));

        Assert.False(stage.Api.TokenRefused.IsCancellationRequested);
        await stage.PostAsync("n-1", Limit);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_WhateverGoesWrong_NoTokenIsEverShown()
    {
        await using var stage = await RestStage.OpenAsync();
        var faults = new List<string>();
        CannedReply[] replies =
        [
            new(500), new(502), CannedReply.WebPage(403), CannedReply.Refusal(404, 10062, "Unknown interaction"),
            new(0) { Cut = true }, CannedReply.Limited(60), new(200) { Body = "{" },
        ];
        foreach (var reply in replies)
        {
            stage.Server.Faults.Next("", reply, times: 9);
            var fault = await Record.ExceptionAsync(
                () => stage.AnswerAsync("interaction-marker-token", TimeSpan.FromSeconds(0.3), Limit));
            faults.Add($"{fault}");
            faults.Add($"{await Record.ExceptionAsync(() => stage.PostAsync("n-1", new CancellationToken(true)))}");
            stage.Server.Faults.Clear();
        }

        Assert.DoesNotContain(faults.Concat(stage.Logs.Lines), text =>
            text.Contains(stage.Server.Settings.Token, StringComparison.Ordinal)
            || text.Contains("interaction-marker-token", StringComparison.Ordinal));
    }
}
