namespace CrewBot.Discord.Gateway;

/// <summary>One socket, used once. Real in production, scripted in tests.</summary>
internal interface IGatewayTransport : IDisposable
{
    Task ConnectAsync(Uri address, CancellationToken cancellationToken);

    /// <summary>Sends one message; callers take turns. A failure shows as the end of what is received.</summary>
    Task SendAsync(ReadOnlyMemory<byte> message, CancellationToken cancellationToken);

    /// <summary>Waits for the next message. A broken connection is an ordinary end, not an exception.</summary>
    ValueTask<TransportMessage> ReceiveAsync(CancellationToken cancellationToken);

    /// <summary>Sends a close frame; the other end's own then comes as the last thing received.</summary>
    Task CloseAsync(int code, CancellationToken cancellationToken);

    /// <summary>Drops the connection at once, which ends a pending receive.</summary>
    void Abort();
}
