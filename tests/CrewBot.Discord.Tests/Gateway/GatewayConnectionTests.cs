using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>One script for each row of the protocol's life cycle.</summary>
public sealed class GatewayConnectionTests : IDisposable
{
    private static readonly Uri Place = new("wss://gateway.invalid");

    private readonly WatchedClock _clock = new();
    private readonly LogBook _logs = new();
    private readonly RecordingHandler _handler = new();
    private readonly GatewaySession _session = new();
    private readonly CancellationTokenSource _stopping = new();
    private readonly EventIntake _intake;

    public GatewayConnectionTests() => _intake = new EventIntake(_handler, _logs.CreateLogger<EventIntake>());

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _stopping.Dispose();
        _intake.Dispose();
        _logs.Dispose();
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_NewSession_IdentifiesWithTokenShardAndNoIntent()
    {
        var transport = new ScriptedTransport();
        var (_, run) = Open(transport);

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
        Assert.Equal("s-1", _session.Id);
        Assert.Equal(new Uri("wss://resume.invalid"), _session.ResumeAddress);
        Assert.Equal(1, _session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_SessionToResume_ResumesFromTheLastSequence()
    {
        _session.Begin("s-9", null);
        _session.Count(17);
        var transport = new ScriptedTransport();
        var (connection, run) = Open(transport);

        transport.Hello();
        var resume = (await transport.ExpectAsync(6, Limit))["d"]!;
        Assert.Equal("""{"token":"secret","session_id":"s-9","seq":17}""", resume.ToJsonString());

        transport.Interaction(18, "501");
        Assert.Equal("501", (await _handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
        transport.Say("""{"op":0,"s":19,"t":"RESUMED","d":{}}""");
        transport.Close(null);
        await run;
        Assert.Equal(ConnectionStage.Active, connection.Reached);
        Assert.Equal(19, _session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_Heartbeats_StartWithJitterAndCarryTheSequence()
    {
        var transport = new ScriptedTransport();
        Open(transport, random: 0.25);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);

        await _clock.PassAsync(TimeSpan.FromSeconds(10), Limit);
        Assert.Equal("""{"op":1,"d":null}""", (await transport.ExpectAsync(1, Limit)).ToJsonString());
        transport.Ready(sequence: 5);
        transport.Say("""{"op":11}""");
        transport.Interaction(6, "1");
        await _handler.NextHandledAsync(Limit);

        await _clock.PassAsync(TimeSpan.FromSeconds(40), Limit);
        Assert.Equal("""{"op":1,"d":6}""", (await transport.ExpectAsync(1, Limit)).ToJsonString());
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_NoAcknowledgement_LeavesWithAResumableCode()
    {
        var transport = new ScriptedTransport();
        var (_, run) = Open(transport, random: 0.5);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);
        transport.Ready();

        await _clock.PassAsync(TimeSpan.FromSeconds(20), Limit);
        await transport.ExpectAsync(1, Limit);
        await _clock.PassAsync(TimeSpan.FromSeconds(40), Limit);

        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal(4000, transport.ClosedWith);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_GatewayAsksForAHeartbeat_BeatsAtOnce()
    {
        var transport = new ScriptedTransport();
        Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);

        transport.Say("""{"op":1,"d":null}""");
        await transport.ExpectAsync(1, Limit);
    }

    [Theory(Timeout = 10_000)]
    [InlineData("""{"op":7,"d":null}""", NextStep.Resume)]
    [InlineData("""{"op":9,"d":true}""", NextStep.Resume)]
    [InlineData("""{"op":9,"d":false}""", NextStep.Identify)]
    [InlineData("""{"op":9}""", NextStep.Identify)]
    internal async Task RunAsync_GatewayEndsTheSession_GivesTheRightNextStep(string frame, NextStep expected)
    {
        var transport = new ScriptedTransport();
        var (_, run) = Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);

        transport.Say(frame);
        Assert.Equal(expected, (await run).Next);
        Assert.Equal(4000, transport.ClosedWith);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_SessionInvalidForGood_WaitsOneToFiveSeconds()
    {
        var transport = new ScriptedTransport();
        var (_, run) = Open(transport, random: 0.5);
        transport.Say("""{"op":9,"d":false}""");

        Assert.Equal(TimeSpan.FromSeconds(3), (await run).Pause);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_ReconnectBeforeHello_IsObeyed()
    {
        var transport = new ScriptedTransport();
        var (_, run) = Open(transport);
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
            _session.Begin("s-1", null);
            _session.Count(1);
        }

        var transport = new ScriptedTransport { Hangs = stage is ConnectionStage.Connecting };
        var (connection, run) = Open(transport);
        await transport.Connected;
        if (stage > ConnectionStage.AwaitingHello)
        {
            transport.Hello(3_600_000);
            await transport.ExpectAsync(stage is ConnectionStage.Resuming ? 6 : 2, Limit);
        }
        else if (stage is ConnectionStage.Connecting)
        {
            await _clock.TimerAsync(due => due == TimeSpan.FromSeconds(10), Limit);
        }

        _clock.Advance(TimeSpan.FromSeconds(seconds - 1));
        Assert.False(run.IsCompleted);
        _clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal(stage, connection.Reached);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_OtherEndNeverAnswersOurClose_IsDroppedAfterASecond()
    {
        var transport = new ScriptedTransport { EchoesClose = false };
        var (_, run) = Open(transport);
        transport.Say("""{"op":1}"""); // shows that the connection listens
        await transport.ExpectAsync(1, Limit);
        await _stopping.CancelAsync();
        _clock.Advance(TimeSpan.FromSeconds(1));

        Assert.Equal(NextStep.Stop, (await run).Next);
        Assert.True(transport.Aborted);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_ToldToStop_ClosesResumableAndCountsNothingMore()
    {
        var transport = new ScriptedTransport { EchoesClose = false };
        var (_, run) = Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready(sequence: 3);
        transport.Interaction(4, "40");
        await _handler.NextHandledAsync(Limit);

        await _stopping.CancelAsync();
        transport.Interaction(5, "50");
        transport.Close(4000);

        Assert.Equal(NextStep.Stop, (await run).Next);
        Assert.Equal(4000, transport.ClosedWith);
        Assert.Equal(4, _session.Sequence);
        Assert.DoesNotContain("50", _handler.Ids);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_UnknownOperationsAndEvents_ArePassedOver()
    {
        var transport = new ScriptedTransport();
        Open(transport);
        transport.Say("""{"op":99,"d":{"x":1}}""");
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        transport.Say("""{"op":0,"s":2,"t":"FISH_JUMPED","d":{"height":3}}""");
        transport.Interaction(3, "7");

        Assert.Equal("7", (await _handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
    }

    [Theory(Timeout = 10_000)]
    [InlineData("""{"op":0,"s":2,"t":"INTERACTION_CREATE","d":{"id":"x","type":2,"token":"private-token"}}""")]
    [InlineData("""{"op":0,"s":2,"t":"INTERACTION_CREATE","d":{"type":2,"token":"private-token"}}""")]
    [InlineData("""{"op":0,"s":2,"t":"INTERACTION_CREATE","d":null}""")]
    [InlineData("""{"op":0,"s":2,"t":"INTERACTION_CREATE"}""")]
    [InlineData("""{"op":0,"s":2,"t":"INTERACTION_CREATE","d":[1,2]}""")]
    public async Task RunAsync_MalformedEvent_IsLoggedOnceWithItsTypeAndTheConnectionKept(string frame)
    {
        var transport = new ScriptedTransport();
        Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        transport.Say(frame);
        transport.Say(frame);
        transport.Interaction(9, "8");

        Assert.Equal("8", (await _handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
        Assert.Single(_logs.Lines, line => line.Contains("INTERACTION_CREATE", StringComparison.Ordinal));
        Assert.DoesNotContain(_logs.Lines, line => line.Contains("private-token", StringComparison.Ordinal));
        Assert.Equal(9, _session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_EventsOutOfOrder_NeverSetTheSequenceBack()
    {
        var transport = new ScriptedTransport();
        Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready(sequence: 1);
        transport.Interaction(8, "8");
        transport.Interaction(3, "3");
        await _handler.NextHandledAsync(Limit);
        await _handler.NextHandledAsync(Limit);

        Assert.Equal(8, _session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_HandlersHang_HeartbeatsStayOnTime()
    {
        _handler.Work = static (_, token) => Task.Delay(Timeout.Infinite, token);
        var transport = new ScriptedTransport();
        Open(transport, random: 0.5);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        for (var number = 0; number < 200; number++)
        {
            transport.Interaction(number + 2, $"{number + 1}");
        }

        for (var number = 0; number < 200; number++)
        {
            await _handler.NextHandledAsync(Limit);
        }

        await _clock.PassAsync(TimeSpan.FromSeconds(20), Limit);
        await transport.ExpectAsync(1, Limit);
        await _intake.DrainAsync(TimeSpan.Zero, _clock);
    }

    [Theory(Timeout = 10_000)]
    [InlineData(typeof(System.Net.WebSockets.WebSocketException))]
    [InlineData(typeof(HttpRequestException))]
    [InlineData(typeof(System.Net.Sockets.SocketException))]
    [InlineData(typeof(System.Security.Authentication.AuthenticationException))]
    public async Task RunAsync_NoConnection_IsAnOrdinaryEnd(Type fault)
    {
        var transport = new ScriptedTransport { ConnectFault = (Exception)Activator.CreateInstance(fault)! };
        var (connection, run) = Open(transport);

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
        var (_, run) = Open(transport);
        transport.Say(hello);

        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.True(transport.HasSentNothingMore());
    }

    private (GatewayConnection Connection, Task<ConnectionEnd> Run) Open(
        ScriptedTransport transport, double random = 0.5)
    {
        var connection = new GatewayConnection(
            transport,
            new ShardId(1, 4),
            new BotToken("secret"),
            _session,
            _intake,
            _clock,
            new FixedRandom(random),
            _logs.CreateLogger<GatewayConnection>());
        return (connection, connection.RunAsync(Place, _stopping.Token));
    }
}
