using CrewBot.Discord.Rest;
using CrewBot.Discord.StandIn;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Tests.Rest;

/// <summary>What the platform is sent: headers, bodies, files.</summary>
public sealed class SentRequestTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_AnyRequest_IsNamedAuthorizedAndVersioned()
    {
        await using var stage = await RestStage.OpenAsync();
        await stage.PostAsync("n-1", Limit);
        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);

        var post = await stage.Server.NextRequestAsync(RestStage.Messages, Limit);
        Assert.StartsWith("DiscordBot (", post.Headers["User-Agent"], StringComparison.Ordinal);
        Assert.Equal($"Bot {stage.Server.Settings.Token}", post.Headers["Authorization"]);
        Assert.Equal("""{"parse":[]}""", post.Json!["allowed_mentions"]!.ToJsonString());
        var answer = await stage.Server.NextRequestAsync(RestStage.Callback, Limit);
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
        await stage.AnswerAsync("token-1", RestStage.ThreeSeconds, Limit);
        await stage.Api.EditOriginalAsync(RestStage.Application, "token-1", RestStage.Text("x"), [], Limit);
        await stage.Api.FollowUpAsync(RestStage.Application, "token-1", RestStage.Text("x"), [], Limit);
        await stage.Api.ListCommandsAsync(RestStage.Application, guild: null, Limit);

        Assert.Equal(11, stage.Server.Requests.Count);
        Assert.All(stage.Server.Requests, description.Check);
    }

    [Fact(Timeout = 20_000)]
    public async Task SendAsync_Pictures_GoAsFormPartsTheWayThePlatformNamesThem()
    {
        await using var stage = await RestStage.OpenAsync();
        stage.Server.Faults.Next(RestStage.Messages, new CannedReply(503)); // the second attempt must carry the files too
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
}
