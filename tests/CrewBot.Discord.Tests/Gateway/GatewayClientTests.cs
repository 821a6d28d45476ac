using System.Text.Json.Nodes;
using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>The fault matrix of the gateway, through real sockets.</summary>
public sealed class GatewayClientTests
{
    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_Upgrade_NamesItselfAndTheVersion()
    {
        await using var stage = await GatewayStage.OpenAsync();
        var socket = await stage.Server.NextActiveAsync(Limit);

        Assert.StartsWith("DiscordBot (", socket.UserAgent, StringComparison.Ordinal);
        Assert.Equal("?v=10&encoding=json", socket.Query);
    }

    [Theory(Timeout = 30_000)]
    [InlineData("cut")]
    [InlineData("close 1000")]
    [InlineData("close 1001")]
    [InlineData("close 4000")]
    [InlineData("close 4008")]
    [InlineData("op 7")]
    [InlineData("op 9 true")]
    public async Task RunAsync_ConnectionLost_ResumesAndMissesNothing(string fault)
    {
        await using var stage = await GatewayStage.OpenAsync();
        var first = await KnownAsync(stage);

        // Lost on its way: in the session before the break, for the client may be back before anything else is done.
        var missed = stage.Server.Interactions.Command("rig");
        missed["id"] = "2";
        first.Session!.Add("INTERACTION_CREATE", missed.ToJsonString());
        await BreakAsync(first, fault);
        var second = await stage.Server.NextActiveAsync(Limit);

        Assert.Same(first.Session, second.Session);
        Assert.Equal("2", (await stage.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
        Assert.Equal("?v=10&encoding=json", second.Query);
        Assert.Equal(1, stage.Server.Identifies);
    }

    [Theory(Timeout = 30_000)]
    [InlineData("close 4003")]
    [InlineData("close 4007")]
    [InlineData("close 4009")]
    [InlineData("op 9 false")]
    public async Task RunAsync_SessionLost_StartsAnother(string fault)
    {
        await using var stage = await GatewayStage.OpenAsync();
        var first = await stage.Server.NextActiveAsync(Limit);
        await BreakAsync(first, fault);
        var second = await stage.Server.NextActiveAsync(Limit);

        Assert.NotSame(first.Session, second.Session);
        Assert.Equal(2, stage.Server.Identifies);
        await SendAsync(second, stage, "7");
        await stage.Handler.NextHandledAsync(Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_ResumeIsRefused_StartsAnotherSession()
    {
        await using var stage = await GatewayStage.OpenAsync();
        var first = await KnownAsync(stage);
        stage.Server.Settings.AcceptsResume = false;
        first.Cut();
        var second = await stage.Server.NextActiveAsync(Limit);

        Assert.NotSame(first.Session, second.Session);
        Assert.Equal(1, stage.Server.Resumes);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NoPlaceToResumeIsNamed_ResumesAtTheGeneralOne()
    {
        await using var stage = await GatewayStage.OpenAsync(new StandInSettings { NamesResumeAddress = false });
        var first = await KnownAsync(stage);
        first.Cut();
        Assert.Same(first.Session, (await stage.Server.NextActiveAsync(Limit)).Session);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_HeartbeatsVanish_LeavesAndResumes()
    {
        var settings = new StandInSettings
        {
            HeartbeatInterval = TimeSpan.FromSeconds(4),
            AcknowledgesHeartbeats = false,
        };
        await using var stage = await GatewayStage.OpenAsync(settings);
        var first = await stage.Server.NextActiveAsync(Limit);
        await first.NextAsync(operation: 1, Limit);
        settings.AcknowledgesHeartbeats = true;
        var second = await stage.Server.NextActiveAsync(Limit);

        Assert.Equal(4000, first.ClientCloseCode);
        Assert.Same(first.Session, second.Session);
        await second.NextAsync(operation: 1, Limit);
        await second.NextAsync(operation: 1, Limit);
        await second.NextAsync(operation: 1, Limit);
    }

    [Theory(Timeout = 30_000)]
    [InlineData(4004, "token")]
    [InlineData(4010, "shard")]
    [InlineData(4011, "shard count")]
    [InlineData(4012, "Update")]
    [InlineData(4013, "intents")]
    [InlineData(4014, "intents")]
    public async Task RunAsync_FatalClose_StopsWithWhatToFix(int code, string remedy)
    {
        await using var stage = await GatewayStage.OpenAsync();
        var socket = await stage.Server.NextActiveAsync(Limit);
        await socket.CloseAsync(code);

        var fatal = await Assert.ThrowsAsync<DiscordFatalException>(() => stage.Run);
        Assert.Contains(remedy, fatal.Message, StringComparison.Ordinal);
        Assert.Equal(1, stage.Server.Identifies);
    }

    [Theory(Timeout = 30_000)]
    [InlineData(401)]
    [InlineData(400)]
    public async Task RunAsync_TokenIsRefusedByTheApi_StopsWithOneLine(int status)
    {
        await using var stage = await GatewayStage.OpenAsync(prepare: server =>
            server.Faults.Next("gateway/bot", CannedReply.Refusal(status, 0, "no")));

        var fatal = await Assert.ThrowsAsync<DiscordFatalException>(() => stage.Run);
        Assert.Contains("token", fatal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(stage.Server.Settings.Token, fatal.ToString(), StringComparison.Ordinal);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NoNetworkAtStart_KeepsTryingAndSaysSo()
    {
        await using var stage = await GatewayStage.OpenAsync(prepare: server =>
            server.Faults.Next("gateway/bot", new CannedReply(503), times: 12));

        await stage.Server.NextActiveAsync(Limit);
        Assert.InRange(
            stage.Logs.Lines.Count(line => line.Contains("cannot be reached", StringComparison.Ordinal)), 1, 3);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NothingListensAtStart_JoinsOnceSomethingDoes()
    {
        var absent = await StandInServer.StartAsync();
        await absent.DisposeAsync();
        await using var stage = GatewayStage.OpenOn(absent, static options => options);
        await stage.Logs.LineAsync("cannot be reached", Limit);

        await using var server = await StandInServer.StartAsync(port: absent.ApiAddress.Port);
        await server.NextActiveAsync(Limit);
        Assert.Equal(1, server.Identifies);
    }

    [Theory(Timeout = 30_000)]
    [InlineData("greeting")]
    [InlineData("answer to the opening")]
    public async Task RunAsync_ServerStopsHalfWay_IsLeftAndTriedAgain(string missing)
    {
        var settings = new StandInSettings { Greets = missing != "greeting", AnswersOpening = missing != "answer to the opening" };
        await using var stage = await GatewayStage.OpenAsync(settings);
        var first = await stage.Server.NextConnectionAsync(Limit);
        await first.Ended;
        Assert.Equal(4000, first.ClientCloseCode);

        (settings.Greets, settings.AnswersOpening) = (true, true);
        await stage.Server.NextActiveAsync(Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_BrokenAndOversizedFrames_KeepTheConnection()
    {
        await using var stage = await GatewayStage.OpenAsync();
        var socket = await stage.Server.NextActiveAsync(Limit);
        await socket.SendTextAsync("""{"op":0,"t":"INTERACTION_CREATE","s":9,"d":{"id":"1","typ""");
        await socket.SendTextAsync("not json at all");
        var large = stage.Server.Interactions.Command("rig");
        large["ballast"] = new string('x', 700_000);
        await socket.SendFragmentedAsync(
            socket.Session!.Add("INTERACTION_CREATE", large.ToJsonString()), pieces: 40);
        Assert.Equal(large["id"]!.ToString(), (await stage.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());

        await SendAsync(socket, stage, "5");
        Assert.Equal("5", (await stage.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_UnknownEverything_IsPassedOver()
    {
        await using var stage = await GatewayStage.OpenAsync();
        var socket = await stage.Server.NextActiveAsync(Limit);
        await socket.SendAsync(77, JsonNode.Parse("""{"a":1}"""));
        await StandInServer.DispatchAsync(socket, "ICE_WENT_OUT", JsonNode.Parse("[]")!);
        var odd = stage.Server.Interactions.Command("rig");
        odd["type"] = 4711;
        odd["data"]!["type"] = 4712;
        odd["context"] = 4713;
        await StandInServer.DispatchAsync(socket, "INTERACTION_CREATE", odd);
        await stage.Handler.NextHandledAsync(Limit);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_GatewayAdvisesShards_StartsThemOneAfterTheOther()
    {
        await using var stage = await GatewayStage.OpenAsync(new StandInSettings { AdvisedShards = 2 });
        var first = await stage.Server.NextActiveAsync(Limit);
        var second = await stage.Server.NextActiveAsync(Limit);

        string[] shards =
        [
            (await first.NextAsync(operation: 2, Limit))["d"]!["shard"]!.ToJsonString(),
            (await second.NextAsync(operation: 2, Limit))["d"]!["shard"]!.ToJsonString(),
        ];
        Assert.Equal(["[0,2]", "[1,2]"], shards.Order());
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_ShardsAreConfigured_FollowsTheConfiguration()
    {
        await using var stage = await GatewayStage.OpenAsync(
            configure: options => options with { ShardCount = 3, ShardIds = [2] });
        var socket = await stage.Server.NextActiveAsync(Limit);
        Assert.Equal("[2,3]", (await socket.NextAsync(operation: 2, Limit))["d"]!["shard"]!.ToJsonString());
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_NoStartsLeftToday_WaitsInsteadOfRiskingTheToken()
    {
        await using var stage = await GatewayStage.OpenAsync(new StandInSettings { StartsLeft = 0 });
        await stage.Logs.LineAsync("Only 0 session starts are left", Limit);
        await stage.StopAsync();

        Assert.Equal(0, stage.Server.Identifies);
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_ToldToStop_LeavesTheSessionResumable()
    {
        await using var stage = await GatewayStage.OpenAsync();
        var socket = await stage.Server.NextActiveAsync(Limit);
        await stage.StopAsync();
        await socket.Ended;

        Assert.Equal(4000, socket.ClientCloseCode);
    }

    // Only a client that has taken its session in can resume it: an interaction handled shows that it has.
    private static async Task<GatewaySocket> KnownAsync(GatewayStage stage)
    {
        var socket = await stage.Server.NextActiveAsync(Limit);
        await SendAsync(socket, stage, "1");
        await stage.Handler.NextHandledAsync(Limit);
        return socket;
    }

    private static Task SendAsync(GatewaySocket socket, GatewayStage stage, string id)
    {
        var interaction = stage.Server.Interactions.Command("rig");
        interaction["id"] = id;
        return StandInServer.DispatchAsync(socket, "INTERACTION_CREATE", interaction);
    }

    private static async Task BreakAsync(GatewaySocket socket, string fault)
    {
        switch (fault.Split(' '))
        {
            case ["close", var code]:
                await socket.CloseAsync(int.Parse(code, System.Globalization.CultureInfo.InvariantCulture));
                break;
            case ["op", "7"]:
                await socket.SendAsync(7, null);
                break;
            case ["op", "9", var resumable]:
                await socket.SendAsync(9, JsonValue.Create(resumable == "true"));
                break;
            default:
                socket.Cut();
                break;
        }
    }
}
