using System.Diagnostics;
using System.Net;
using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Tests.Fakes;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Rest;

public sealed class RestClientTests
{
    private const string Messages = "channels/";
    private const string Callback = "/callback";
    private static readonly TimeSpan ThreeSeconds = TimeSpan.FromSeconds(3);

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_AnyRequest_IsNamedAuthorizedAndVersioned()
    {
        await using var stage = await RestStage.OpenAsync();
        await stage.PostAsync("n-1", Limit);
        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);

        var post = await stage.Server.NextRequestAsync(Messages, Limit);
        Assert.StartsWith("DiscordBot (", post.Headers["User-Agent"], StringComparison.Ordinal);
        Assert.Equal($"Bot {stage.Server.Settings.Token}", post.Headers["Authorization"]);
        Assert.Equal("""{"parse":[]}""", post.Json!["allowed_mentions"]!.ToJsonString());
        var answer = await stage.Server.NextRequestAsync(Callback, Limit);
        Assert.False(answer.Headers.ContainsKey("Authorization"));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_EveryCall_SendsWhatThePublishedDescriptionAllows()
    {
        var description = Contracts.ApiDescription.OrSkip();
        await using var stage = await RestStage.OpenAsync();
        await stage.Api.GetGatewayAdviceAsync(Limit);
        await stage.Api.GetApplicationAsync(Limit);
        var posted = await stage.PostAsync("n-1", Limit);
        await stage.Api.EditMessageAsync(RestStage.Channel, posted.Id!.Value, RestStage.Text("x"), [], Limit);
        await stage.Api.DeleteMessageAsync(RestStage.Channel, posted.Id!.Value, Limit);
        var thread = new ThreadBody { Name = "Tamarack Bay, Saturday", AutoArchiveDuration = 1440 };
        await stage.Api.OpenThreadAsync(RestStage.Channel, posted.Id, thread, Limit);
        await stage.Api.OpenThreadAsync(
            RestStage.Channel, message: null, thread with { Type = ThreadBody.PublicThread }, Limit);
        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);
        await stage.Api.EditOriginalAsync(RestStage.Application, "token-1", RestStage.Text("x"), [], Limit);
        await stage.Api.FollowUpAsync(RestStage.Application, "token-1", RestStage.Text("x"), [], Limit);
        await stage.Api.ListCommandsAsync(RestStage.Application, guild: null, Limit);

        Assert.Equal(11, stage.Server.Requests.Count);
        Assert.All(stage.Server.Requests, description.Check);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_Limited_WaitsTheLongerOfHeaderAndBodyThenSucceeds()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, CannedReply.Limited(0.3) with
        {
            Headers = new Dictionary<string, string> { ["Retry-After"] = "0.65", ["X-RateLimit-Scope"] = "user" },
        });

        var watch = Stopwatch.StartNew();
        await stage.PostAsync("n-1", Limit);
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(0.6), TimeSpan.FromSeconds(5));
        Assert.Equal(2, stage.Count(Messages));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_BucketLimited_HoldsItsBucketButNoOther()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, CannedReply.Limited(1));
        var limited = stage.PostAsync("n-1", Limit);
        await stage.Server.NextRequestAsync(Messages, Limit);

        await stage.Api.GetApplicationAsync(Limit);
        Assert.False(limited.IsCompleted);
        await limited;
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_GloballyLimited_HoldsEverythingButAnswersToPeople()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, CannedReply.Limited(1.2, global: true));
        var limited = stage.PostAsync("n-1", Limit);
        await stage.Server.NextRequestAsync(Messages, Limit);
        await Task.WhenAny(limited, stage.AnswerAsync("token-1", ThreeSeconds, Limit));

        var watch = Stopwatch.StartNew();
        await stage.Api.GetApplicationAsync(Limit);
        await limited;
        Assert.True(watch.Elapsed > TimeSpan.FromSeconds(0.5), $"went through after {watch.Elapsed}");
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_LimitLongerThanTheCallCanWait_SaysSoAtOnce()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, CannedReply.Limited(40));

        var limited = await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.InRange(limited.Wait!.Value.TotalSeconds, 40, 41);
    }

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
    public async Task CreateMessageAsync_CarriedOutThenCut_MakesExactlyOneMessage()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, new CannedReply(0) { CarriedOut = true, Cut = true });

        await stage.PostAsync("relay-42", Limit);
        Assert.Equal(2, stage.Count(Messages));
        Assert.Equal(1, stage.Server.MessagesCreated);
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_FirstAttemptArrivedButItsAnswerDidNot_CountsAsAnswered()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Callback, new CannedReply(0) { CarriedOut = true, Cut = true });

        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);
        Assert.Equal(2, stage.Count(Callback));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_AnsweredElsewhere_IsRefusedOnce()
    {
        await using var stage = await RestStage.OpenAsync();
        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);

        var refused = await Assert.ThrowsAsync<DiscordApiException>(
            () => stage.AnswerAsync("token-1", ThreeSeconds, Limit));
        Assert.Equal(40060, refused.Code);
        Assert.Equal(2, stage.Count(Callback));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_ServerNeverAnswers_IsTriedAgainInsideTheThreeSeconds()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Callback, new CannedReply(0) { Silent = true });

        var watch = Stopwatch.StartNew();
        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(1.4), TimeSpan.FromSeconds(2.9));
    }

    [Fact(Timeout = 20_000)]
    public async Task AnswerAsync_ServerStaysSilent_GivesUpWhenTheTimeIsOver()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Callback, new CannedReply(0) { Silent = true }, times: 20);

        var watch = Stopwatch.StartNew();
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.AnswerAsync("token-1", ThreeSeconds, Limit));
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(2.8), TimeSpan.FromSeconds(4.5));
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
        await stage.AnswerAsync("token-1", ThreeSeconds, Limit);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_TokenRefused_StopsEverythingThatCarriesIt()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next("applications", CannedReply.Refusal(401, 0, "401: Unauthorized"));
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.Api.GetApplicationAsync(Limit));

        Assert.True(stage.Api.TokenRefused.IsCancellationRequested);
        await Assert.ThrowsAsync<DiscordApiException>(() => stage.PostAsync("n-1", Limit));
        Assert.Equal(0, stage.Count(Messages));
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
    public async Task DeleteMessageAsync_RepeatedAfterItWorked_IsDone()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, new CannedReply(0) { CarriedOut = true, Cut = true });
        stage.Server.Faults.Next(Messages, CannedReply.Refusal(404, 10008, "Unknown Message"));

        await stage.Api.DeleteMessageAsync(RestStage.Channel, new Snowflake(5), Limit);

        Assert.Equal(2, stage.Count(Messages));
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_Refused_ShowsTheFlattenedFaultTree()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, new CannedReply(400)
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
    public async Task SendAsync_Pictures_GoAsFormPartsTheWayThePlatformNamesThem()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(Messages, new CannedReply(503)); // the second attempt must carry the files too
        var message = RestStage.Text("Standings") with
        {
            Attachments = [new AttachmentPlaceholder { Id = "0", Filename = "standings.png" }],
        };
        byte[] picture = [1, 2, 3, 250];
        await stage.Api.CreateMessageAsync(
            RestStage.Channel, message, "n-1", [new Upload("standings.png", "image/png", picture)], Limit);

        Assert.All(stage.Server.Requests, request =>
        {
            var file = Assert.Single(request.Files);
            Assert.Equal("""form-data; name="files[0]"; filename=standings.png; filename*=utf-8''standings.png""", file.Disposition);
            Assert.Equal("image/png", file.ContentType);
            Assert.Equal(picture, file.Content);
            Assert.Equal("0", request.Json!["attachments"]![0]!["id"]!.GetValue<string>());
        });
        Assert.Equal(2, stage.Server.Requests.Count);
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
