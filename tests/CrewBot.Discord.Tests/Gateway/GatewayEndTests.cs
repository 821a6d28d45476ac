using CrewBot.Discord.Gateway;
using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>How a connection ends, and what comes next.</summary>
public sealed class GatewayEndTests : IDisposable
{
    private readonly ConnectionScript _script = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _script.Dispose();

    [Theory(Timeout = 10_000)]
    [InlineData("""{"op":7,"d":null}""", NextStep.Resume)]
    [InlineData("""{"op":9,"d":true}""", NextStep.Resume)]
    [InlineData("""{"op":9,"d":false}""", NextStep.Identify)]
    [InlineData("""{"op":9}""", NextStep.Identify)]
    internal async Task RunAsync_GatewayEndsTheSession_GivesTheRightNextStep(string frame, NextStep expected)
    {
        var transport = new ScriptedTransport();
        var (_, run) = _script.Open(transport);
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
        var (_, run) = _script.Open(transport, random: 0.5);
        transport.Say("""{"op":9,"d":false}""");

        Assert.Equal(TimeSpan.FromSeconds(3), (await run).Pause);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_ToldToStop_ClosesResumableAndCountsNothingMore()
    {
        var transport = new ScriptedTransport { EchoesClose = false };
        var (_, run) = _script.Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready(sequence: 3);
        transport.Interaction(4, "40");
        await _script.Handler.NextHandledAsync(Limit);

        await _script.StopAsync();
        transport.Interaction(5, "50");
        transport.Close(4000);

        Assert.Equal(NextStep.Stop, (await run).Next);
        Assert.Equal(4000, transport.ClosedWith);
        Assert.Equal(4, _script.Session.Sequence);
        Assert.DoesNotContain("50", _script.Handler.Ids);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_OtherEndNeverAnswersOurClose_IsDroppedAfterASecond()
    {
        var transport = new ScriptedTransport { EchoesClose = false };
        var (_, run) = _script.Open(transport);
        transport.Say("""{"op":1}"""); // shows that the connection listens
        await transport.ExpectAsync(1, Limit);
        await _script.StopAsync();
        _script.Clock.Advance(TimeSpan.FromSeconds(1));

        Assert.Equal(NextStep.Stop, (await run).Next);
        Assert.True(transport.Aborted);
    }
}
