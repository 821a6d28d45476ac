namespace CrewBot.Discord.Gateway;

/// <summary>What came from the other end: a whole message, or the end of the connection.</summary>
/// <param name="Payload">UTF-8 text, valid until the next receive.</param>
/// <param name="IsClosed">The connection is over, by a close frame or without one.</param>
/// <param name="CloseCode">The close frame's code; null when the connection just broke.</param>
internal readonly record struct TransportMessage(ReadOnlyMemory<byte> Payload, bool IsClosed, int? CloseCode)
{
    public static TransportMessage Text(ReadOnlyMemory<byte> payload) => new(payload, false, null);

    public static TransportMessage Closed(int? code) => new(default, true, code);
}
