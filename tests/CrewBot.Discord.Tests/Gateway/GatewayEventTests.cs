using CrewBot.Discord.Tests.Fakes;

namespace CrewBot.Discord.Tests.Gateway;

/// <summary>What comes in over a connection, and what is counted.</summary>
public sealed class GatewayEventTests : IDisposable
{
    private readonly ConnectionScript _script = new();

    private static CancellationToken Limit => TestContext.Current.CancellationToken;

    public void Dispose() => _script.Dispose();

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_UnknownOperationsAndEvents_ArePassedOver()
    {
        var transport = new ScriptedTransport();
        _script.Open(transport);
        transport.Say("""{"op":99,"d":{"x":1}}""");
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        transport.Say("""{"op":0,"s":2,"t":"FISH_JUMPED","d":{"height":3}}""");
        transport.Interaction(3, "7");

        Assert.Equal("7", (await _script.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
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
        _script.Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready();
        transport.Say(frame);
        transport.Say(frame);
        transport.Interaction(9, "8");

        Assert.Equal("8", (await _script.Handler.NextHandledAsync(Limit)).Interaction.Id.ToString());
        Assert.Single(_script.Logs.Lines, line => line.Contains("INTERACTION_CREATE", StringComparison.Ordinal));
        Assert.DoesNotContain(_script.Logs.Lines, line => line.Contains("private-token", StringComparison.Ordinal));
        Assert.Equal(9, _script.Session.Sequence);
    }

    [Fact(Timeout = 10_000)]
    public async Task RunAsync_EventsOutOfOrder_NeverSetTheSequenceBack()
    {
        var transport = new ScriptedTransport();
        _script.Open(transport);
        transport.Hello();
        await transport.ExpectAsync(2, Limit);
        transport.Ready(sequence: 1);
        transport.Interaction(8, "8");
        transport.Interaction(3, "3");
        await _script.Handler.NextHandledAsync(Limit);
        await _script.Handler.NextHandledAsync(Limit);

        Assert.Equal(8, _script.Session.Sequence);
    }
}
