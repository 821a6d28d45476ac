using System.Net.WebSockets;
using CrewBot.Discord.Rest;

namespace CrewBot.Discord.Gateway;

/// <summary>The real socket.</summary>
internal sealed class WebSocketTransport : IGatewayTransport
{
    private const int UsualSize = 16 * 1024;
    private const int LargestMessage = 16 * 1024 * 1024;

    private readonly ClientWebSocket _socket = new();
    private byte[] _buffer = new byte[UsualSize];

    public WebSocketTransport()
    {
        _socket.Options.SetRequestHeader("User-Agent", ApiConnection.UserAgent);
        _socket.Options.KeepAliveInterval = TimeSpan.Zero; // the gateway's own heartbeat watches the line
    }

    public Task ConnectAsync(Uri address, CancellationToken cancellationToken) =>
        _socket.ConnectAsync(address, cancellationToken);

    public async Task SendAsync(ReadOnlyMemory<byte> message, CancellationToken cancellationToken)
    {
        try
        {
            await _socket.SendAsync(message, WebSocketMessageType.Text, endOfMessage: true, cancellationToken);
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
                var part = await _socket.ReceiveAsync(_buffer.AsMemory(filled), cancellationToken);
                if (part.MessageType is WebSocketMessageType.Close)
                {
                    return TransportMessage.Closed((int?)_socket.CloseStatus);
                }

                filled += part.Count;
                if (part.EndOfMessage)
                {
                    return TransportMessage.Text(_buffer.AsMemory(0, filled));
                }

                if (filled == _buffer.Length && !TryGrow())
                {
                    Abort();
                    return TransportMessage.Closed(null);
                }
            }
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            return TransportMessage.Closed((int?)_socket.CloseStatus);
        }
    }

    public async Task CloseAsync(int code, CancellationToken cancellationToken)
    {
        try
        {
            await _socket.CloseOutputAsync((WebSocketCloseStatus)code, statusDescription: null, cancellationToken);
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            Abort();
        }
    }

    public void Abort() => _socket.Abort();

    public void Dispose() => _socket.Dispose();

    private static bool IsBroken(Exception fault) =>
        fault is WebSocketException or IOException or ObjectDisposedException or InvalidOperationException
            or OperationCanceledException;

    private bool TryGrow()
    {
        if (_buffer.Length >= LargestMessage)
        {
            return false;
        }

        Array.Resize(ref _buffer, _buffer.Length * 2);
        return true;
    }

    private void ForgetLargeBuffer()
    {
        if (_buffer.Length > UsualSize)
        {
            _buffer = new byte[UsualSize];
        }
    }
}
