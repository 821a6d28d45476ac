using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>When a connection beats, and what it makes of silence.</summary>
public sealed class GatewayHeartbeatTests : IDisposable
{
    private readonly ConnectionScript _script = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _script.Dispose();

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_Heartbeats_StartWithJitterAndCarryTheSequence()
    {
        var transport = new ScriptedTransport();
        _script.Open(transport, random: 0.25);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);

        await _script.Clock.PassAsync(TimeSpan.FromSeconds(10), Limit);
        Assert.Equal("""{"op":1,"d":null}""", (await transport.ExpectAsync(1, Limit)).ToJsonString());
        transport.Ready(sequence: 5);
        transport.Say("""{"op":11}""");
        transport.Interaction(6, "1");
        await _script.Handler.NextHandledAsync(Limit);

        await _script.Clock.PassAsync(TimeSpan.FromSeconds(40), Limit);
        Assert.Equal("""{"op":1,"d":6}""", (await transport.ExpectAsync(1, Limit)).ToJsonString());
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_NoAcknowledgement_LeavesWithAResumableCode()
    {
        var transport = new ScriptedTransport();
        var (_, run) = _script.Open(transport, random: 0.5);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);
        transport.Ready();

        await _script.Clock.PassAsync(TimeSpan.FromSeconds(20), Limit);
        await transport.ExpectAsync(1, Limit);
        await _script.Clock.PassAsync(TimeSpan.FromSeconds(40), Limit);

        Assert.Equal(NextStep.Resume, (await run).Next);
        Assert.Equal(4000, transport.ClosedWith);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_GatewayAsksForAHeartbeat_BeatsAtOnce()
    {
        var transport = new ScriptedTransport();
        _script.Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);

        transport.Say("""{"op":1,"d":null}""");
        await transport.ExpectAsync(1, Limit);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_HandlersHang_HeartbeatsStayOnTime()
    {
        _script.Handler.Work = static (_, token) => Task.Delay(Timeout.Infinite, token);
        var transport = new ScriptedTransport();
        _script.Open(transport, random: 0.5);
        transport.Hello(40_000);
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        for (var number = 0; number < 200; number++)
        {
            transport.Interaction(number + 2, $"{number + 1}");
        }

        for (var number = 0; number < 200; number++)
        {
            await _script.Handler.NextHandledAsync(Limit);
        }

        await _script.Clock.PassAsync(TimeSpan.FromSeconds(20), Limit);
        await transport.ExpectAsync(1, Limit);
        await _script.Intake.DrainAsync(TimeSpan.Zero, _script.Clock);
    }
}
