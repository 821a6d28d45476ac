using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>How a connection comes about, and when it is given up half-way.</summary>
public sealed class GatewayHandshakeTests : IDisposable
{
    private readonly ConnectionScript _script = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _script.Dispose();

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_NewSession_IdentifiesWithTokenShardAndNoPrivilegedIntent()
    {
        var transport = new ScriptedTransport();
        var (_, run) = _script.Open(transport);

        Assert.Equal("wss://gateway.invalid/?v=10&encoding=json", (await transport.Connected).ToString());
        transport.Hello();
        var identify = (await transport.ExpectAsync(2, Limit))["d"]!;
        Assert.Equal("secret", identify["token"]!.GetValue<string>());
        Assert.Equal(1 << 12, identify["intents"]!.GetValue<int>()); // direct messages: no privileged intent
        Assert.Equal("[1,4]", identify["shard"]!.ToJsonString());
        Assert.Equal("crewbot", identify["properties"]!["browser"]!.GetValue<string>());

        transport.Ready(sequence: 1);
        transport.Close(1001);
        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal("s-1", _script.Session.Id);
        Assert.Equal(new Uri("wss://resume.invalid"), _script.Session.ResumeAddress);
        Assert.Equal(1, _script.Session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_SessionToResume_ResumesFromTheLastSequence()
    {
        _script.Session.Begin("s-9", null);
        _script.Session.Count(17);
        var transport = new ScriptedTransport();
        var (connection, run) = _script.Open(transport);

        transport.Hello();
        var resume = (await transport.ExpectAsync(6, Limit))["d"]!;
        Assert.Equal("""{"token":"secret","session_id":"s-9","seq":17}""", resume.ToJsonString());

        transport.Interaction(18, "501");
        Assert.Equal("501", (await _script.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
        transport.Say("""{"op":0,"s":19,"t":"RESUMED","d":{}}""");
        transport.Close(null);
        await run;
        Assert.Equal(ConnectionStage.Active, connection.Reached);
        Assert.Equal(19, _script.Session.Sequence);
    }

    [Theory(Timeout = 10_000)]
    [InlineData(typeof(System.Net.WebSockets.WebSocketException))]
    [InlineData(typeof(HttpRequestException))]
    [InlineData(typeof(System.Net.Sockets.SocketException))]
    [InlineData(typeof(System.Security.Authentication.AuthenticationException))]
    public async Task RunAsync_NoConnection_IsAnOrdinaryEnd(Type fault)
    {
        var transport = new ScriptedTransport { ConnectFault = (Exception)Activator.CreateInstance(fault)! };
        var (connection, run) = _script.Open(transport);

        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal(ConnectionStage.Connecting, connection.Reached);
    }

    [Theory(Timeout = 10_000)]
    [InlineData("""{"op":10,"d":{}}""")]
    [InlineData("""{"op":10,"d":{"heartbeat_interval":0}}""")]
    [InlineData("""{"op":10,"d":{"heartbeat_interval":-5}}""")]
    [InlineData("""{"op":10}""")]
    public async Task RunAsync_HelloWithoutAnInterval_LeavesInsteadOfFloodingTheGateway(string hello)
    {
        var transport = new ScriptedTransport();
        var (_, run) = _script.Open(transport);
        transport.Say(hello);

        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.True(transport.HasSentNothingMore());
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_ReconnectBeforeHello_IsObeyed()
    {
        var transport = new ScriptedTransport();
        var (_, run) = _script.Open(transport);
        transport.Say("""{"op":7,"d":null}""");
        Assert.Equal(NextStep.Resume, (await run).Next);
    }

    [Theory(Timeout = 10_000)]
    [InlineData(ConnectionStage.Connecting, 10)]
    [InlineData(ConnectionStage.AwaitingHello, 20)]
    [InlineData(ConnectionStage.Identifying, 30)]
    [InlineData(ConnectionStage.Resuming, 60)]
    internal async Task RunAsync_OtherEndStopsHalfWay_IsLeftAtTheDeadline(ConnectionStage stage, int seconds)
    {
        if (stage is ConnectionStage.Resuming)
        {
            _script.Session.Begin("s-1", null);
            _script.Session.Count(1);
        }

        var transport = new ScriptedTransport { Hangs = stage is ConnectionStage.Connecting };
        var (connection, run) = _script.Open(transport);
        await transport.Connected;
        if (stage > ConnectionStage.AwaitingHello)
        {
            transport.Hello(3_600_000);
            await transport.ExpectAsync(stage is ConnectionStage.Resuming ? 6 : 2, Limit);
        }
        else if (stage is ConnectionStage.Connecting)
        {
            await _script.Clock.TimerAsync(due => due == TimeSpan.FromSeconds(10), Limit);
        }

        _script.Clock.Advance(TimeSpan.FromSeconds(seconds - 1));
        Assert.False(run.IsCompleted);
        _script.Clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal(stage, connection.Reached);
    }
}
