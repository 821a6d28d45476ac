using System.Net.WebSockets;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading.Channels;

namespace CrewBot.Discord.StandIn;

/// <summary>The server's end of one gateway connection.</summary>
public sealed class GatewaySocket(WebSocket socket, string userAgent, string query) : IDisposable
{
    private readonly SemaphoreSlim _sending = new(1, 1);
    private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Channel<JsonNode> _received = Channel.CreateUnbounded<JsonNode>();

    public string UserAgent { get; } = userAgent;
    public string Query { get; } = query;

    /// <summary>Set once this connection has identified or resumed.</summary>
    public StandInSession? Session { get; internal set; }

    /// <summary>The client's close code, once it has closed.</summary>
    public int? ClientCloseCode { get; private set; }

    /// <summary>Completes when the connection is over.</summary>
    public Task Ended => _ended.Task;

    /// <summary>The next recorded frame with this operation; others before it are passed over.</summary>
    public async Task<JsonNode> NextAsync(int operation, CancellationToken cancellationToken)
    {
        while (true)
        {
            var frame = await _received.Reader.ReadAsync(cancellationToken);
            if (frame["op"]!.GetValue<int>() == operation)
            {
                return frame;
            }
        }
    }

    public Task SendAsync(int operation, JsonNode? data) =>
        SendTextAsync(new JsonObject { ["op"] = operation, ["d"] = data?.DeepClone() }.ToJsonString());

    public Task SendTextAsync(string text) => SendBytesAsync(Encoding.UTF8.GetBytes(text));

    public async Task SendBytesAsync(ReadOnlyMemory<byte> text)
    {
        await _sending.WaitAsync();
        try
        {
            await socket.SendAsync(text, WebSocketMessageType.Text, endOfMessage: true, CancellationToken.None);
        }
        catch (Exception gone) when (gone is WebSocketException or ObjectDisposedException or IOException)
        {
            // The client left; the receive side notices.
        }
        finally
        {
            _sending.Release();
        }
    }

    /// <summary>Sends one message in several fragments.</summary>
    public async Task SendFragmentedAsync(string text, int pieces)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var size = Math.Max(1, bytes.Length / pieces);
        await _sending.WaitAsync();
        try
        {
            for (var start = 0; start < bytes.Length; start += size)
            {
                var end = Math.Min(start + size, bytes.Length);
                await socket.SendAsync(
                    bytes.AsMemory(start..end), WebSocketMessageType.Text, end == bytes.Length, CancellationToken.None);
            }
        }
        finally
        {
            _sending.Release();
        }
    }

    public Task CloseAsync(int code) =>
        socket.CloseOutputAsync((WebSocketCloseStatus)code, "told to", CancellationToken.None);

    /// <summary>Drops the connection without a close frame.</summary>
    public void Cut() => socket.Abort();

    public void Dispose() => _sending.Dispose();

    internal void Record(JsonNode frame) => _received.Writer.TryWrite(frame);

    /// <summary>Receives the next frame, or nothing when the connection is over.</summary>
    internal async Task<JsonNode?> ReceiveAsync(byte[] buffer)
    {
        try
        {
            var filled = 0;
            while (true)
            {
                var part = await socket.ReceiveAsync(buffer.AsMemory(filled), CancellationToken.None);
                if (part.MessageType is WebSocketMessageType.Close)
                {
                    ClientCloseCode = (int?)socket.CloseStatus;
                    return null;
                }

                filled += part.Count;
                if (part.EndOfMessage)
                {
                    return JsonNode.Parse(buffer.AsSpan(0, filled));
                }
            }
        }
        catch (Exception gone) when (gone is WebSocketException or ObjectDisposedException or IOException)
        {
            return null;
        }
    }

    internal async Task EndAsync()
    {
        try
        {
            if (socket.State is WebSocketState.CloseReceived)
            {
                await socket.CloseOutputAsync(
                    socket.CloseStatus ?? WebSocketCloseStatus.NormalClosure, null, CancellationToken.None);
            }
        }
        catch (Exception gone) when (gone is WebSocketException or ObjectDisposedException or IOException)
        {
            // Over is over.
        }

        _received.Writer.TryComplete();
        _ended.TrySetResult();
    }
}
