using System.Text;
using System.Text.Json.Nodes;
using System.Threading.Channels;
using CrewBot.Discord.Gateway;

namespace CrewBot.Discord.Tests.Fakes;

/// <summary>The other end of a connection, played by the test.</summary>
internal sealed class ScriptedTransport : IGatewayTransport
{
    private readonly Channel<TransportMessage> _incoming = Channel.CreateUnbounded<TransportMessage>();
    private readonly Channel<JsonNode> _sent = Channel.CreateUnbounded<JsonNode>();
    private readonly TaskCompletionSource<Uri> _connected = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Fails to connect like this.</summary>
    public Exception? ConnectFault { get; init; }

    /// <summary>Connecting never ends by itself.</summary>
    public bool Hangs { get; init; }

    /// <summary>Whether a close frame is answered with one.</summary>
    public bool EchoesClose { get; init; } = true;

    public int? ClosedWith { get; private set; }
    public bool Aborted { get; private set; }
    public Task<Uri> Connected => _connected.Task;

    public async Task ConnectAsync(Uri address, CancellationToken cancellationToken)
    {
        _connected.TrySetResult(address);
        if (Hangs)
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
        }

        if (ConnectFault is not null)
        {
            throw ConnectFault;
        }
    }

    public Task SendAsync(ReadOnlyMemory<byte> message, CancellationToken cancellationToken)
    {
        _sent.Writer.TryWrite(JsonNode.Parse(message.Span)!);
        return Task.CompletedTask;
    }

    public ValueTask<TransportMessage> ReceiveAsync(CancellationToken cancellationToken) =>
        _incoming.Reader.ReadAsync(cancellationToken);

    public Task CloseAsync(int code, CancellationToken cancellationToken)
    {
        ClosedWith = code;
        if (EchoesClose)
        {
            Close(code);
        }

        return Task.CompletedTask;
    }

    public void Abort()
    {
        Aborted = true;
        _incoming.Writer.TryWrite(TransportMessage.Closed(null));
    }

    public void Dispose()
    {
    }

    public void Say(string frame) =>
        _incoming.Writer.TryWrite(TransportMessage.Text(Encoding.UTF8.GetBytes(frame)));

    public void Hello(int intervalMs = 40_000) => Say($$$"""{"op":10,"d":{"heartbeat_interval":{{{intervalMs}}}}}""");

    public void Ready(int sequence = 1, string sessionId = "s-1", string resume = "wss://resume.invalid") =>
        Say($$$"""
            {"op":0,"s":{{{sequence}}},"t":"READY","d":{"v":10,"session_id":"{{{sessionId}}}",
            "resume_gateway_url":"{{{resume}}}","application":{"id":"77","flags":0} } }
            """);

    public void Interaction(int sequence, string id) =>
        Say($$$"""{"op":0,"s":{{{sequence}}},"t":"INTERACTION_CREATE","d":{"id":"{{{id}}}","type":2,"token":"t"}}""");

    public void Close(int? code) => _incoming.Writer.TryWrite(TransportMessage.Closed(code));

    /// <summary>The next frame that the client sends; it must have this operation.</summary>
    public async Task<JsonNode> ExpectAsync(int operation, CancellationToken cancellationToken)
    {
        var frame = await _sent.Reader.ReadAsync(cancellationToken);
        Assert.Equal(operation, frame["op"]!.GetValue<int>());
        return frame;
    }

    public bool HasSentNothingMore() => !_sent.Reader.TryPeek(out _);
}
