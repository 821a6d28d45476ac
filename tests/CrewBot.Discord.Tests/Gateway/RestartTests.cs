using CrewBot.Discord.StandIn;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>A client that is stopped and started again, on a server that keeps its session.</summary>
public sealed class RestartTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("crewbot-");

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    private string File => Path.Combine(_folder.FullName, "session");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_StartedAgainSoon_TakesItsSessionUpAndMissesNothing()
    {
        await using var server = await StandInServer.StartAsync();
        var session = await RunOnceAsync(server);
        session.Add("INTERACTION_CREATE", Interaction(server, "2"));
        await using var second = Open(server);

        Assert.Same(session, (await server.NextActiveAsync(Limit)).Session);
        var handled = await second.Handler.NextHandledAsync(Limit);
        Assert.Equal("2", handled.Interaction.Id.ToString());
        Assert.True(handled.WasMissed);
        Assert.Equal((1, 1), (server.Identifies, server.Resumes));
        Assert.False(System.IO.File.Exists(File));
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_ShardsAreConfigured_TakeTheirSessionsUpToo()
    {
        await using var server = await StandInServer.StartAsync();
        await RunOnceAsync(server, shards: 2);
        await using var second = Open(server, shards: 2);
        await server.NextActiveAsync(Limit);
        await server.NextActiveAsync(Limit);

        Assert.Equal((2, 2), (server.Identifies, server.Resumes));
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_TheSessionIsGoneByThen_StartsAnother()
    {
        await using var server = await StandInServer.StartAsync();
        var session = await RunOnceAsync(server);
        server.Settings.AcceptsResume = false;
        await using var second = Open(server);

        Assert.NotSame(session, (await server.NextActiveAsync(Limit)).Session);
        Assert.Equal((2, 1), (server.Identifies, server.Resumes));
    }

    [Fact(Timeout = 30_000)]
    public async Task RunAsync_AnotherShardCountByNow_StartsNewSessions()
    {
        await using var server = await StandInServer.StartAsync();
        await RunOnceAsync(server);
        await using var second = Open(server, shards: 2);
        await server.NextActiveAsync(Limit);
        await server.NextActiveAsync(Limit);

        Assert.Equal((3, 0), (server.Identifies, server.Resumes));
    }

    private GatewayStage Open(StandInServer server, int? shards = null) =>
        GatewayStage.OpenOn(server, options => options with { SessionFile = File, ShardCount = shards });

    private async Task<StandInSession> RunOnceAsync(StandInServer server, int? shards = null)
    {
        await using var stage = Open(server, shards);
        GatewaySocket socket = null!;
        for (var shard = 0; shard < (shards ?? 1); shard++)
        {
            socket = await server.NextActiveAsync(Limit);
            await StandInServer.DispatchAsync(socket, "INTERACTION_CREATE", System.Text.Json.Nodes.JsonNode.Parse(Interaction(server, "1"))!);
            await stage.Handler.NextHandledAsync(Limit); // only who has taken a session in can put it by
        }

        await stage.StopAsync();
        return socket.Session!;
    }

    private static string Interaction(StandInServer server, string id)
    {
        var interaction = server.Interactions.Command("rig");
        interaction["id"] = id;
        return interaction.ToJsonString();
    }
}
