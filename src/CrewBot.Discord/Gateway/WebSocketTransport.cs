using System.Net.WebSockets;
using CrewBot.Discord.Rest;

namespace CrewBot.Discord.Gateway;

/// <summary>The real socket.</summary>
internal sealed class WebSocketTransport : IGatewayTransport
{
    private const int UsualSize = 16 * 1024;
    private const int LargestMessage = 16 * 1024 * 1024;

    private readonly ClientWebSocket socket = new();
    private byte[] buffer = new byte[UsualSize];

    public WebSocketTransport()
    {
        socket.Options.SetRequestHeader("User-Agent", ApiConnection.UserAgent);
        socket.Options.KeepAliveInterval = TimeSpan.Zero; // the gateway's own heartbeat watches the line
    }

    public Task ConnectAsync(Uri address, CancellationToken cancellationToken) =>
        socket.ConnectAsync(address, cancellationToken);

    public async Task SendAsync(ReadOnlyMemory<byte> message, CancellationToken cancellationToken)
    {
        try
        {
            await socket.SendAsync(message, WebSocketMessageType.Text, endOfMessage: true, cancellationToken);
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            Abort();
        }
    }

    public async ValueTask<TransportMessage> ReceiveAsync(CancellationToken cancellationToken)
    {
        ForgetLargeBuffer();
        var filled = 0;
        try
        {
            while (true)
            {
                var part = await socket.ReceiveAsync(buffer.AsMemory(filled), cancellationToken);
                if (part.MessageType is WebSocketMessageType.Close)
                {
                    return TransportMessage.Closed((int?)socket.CloseStatus);
                }

                filled += part.Count;
                if (part.EndOfMessage)
                {
                    return TransportMessage.Text(buffer.AsMemory(0, filled));
                }

                if (filled == buffer.Length && !TryGrow())
                {
                    Abort();
                    return TransportMessage.Closed(null);
                }
            }
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            return TransportMessage.Closed((int?)socket.CloseStatus);
        }
    }

    public async Task CloseAsync(int code, CancellationToken cancellationToken)
    {
        try
        {
            await socket.CloseOutputAsync((WebSocketCloseStatus)code, statusDescription: null, cancellationToken);
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            Abort();
        }
    }

    public void Abort() => socket.Abort();

    public void Dispose() => socket.Dispose();

    private static bool IsBroken(Exception fault) =>
        fault is WebSocketException or IOException or ObjectDisposedException or InvalidOperationException
            or OperationCanceledException;

    private bool TryGrow()
    {
        if (buffer.Length >= LargestMessage)
        {
            return false;
        }

        Array.Resize(ref buffer, buffer.Length * 2);
        return true;
    }

    private void ForgetLargeBuffer()
    {
        if (buffer.Length > UsualSize)
        {
            buffer = new byte[UsualSize];
        }
    }
}
