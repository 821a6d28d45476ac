using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Gateway;

/// <summary>
/// The envelope of a frame. Its payload stays raw until someone wants it, and is valid until the next frame is received.
/// </summary>
internal readonly record struct GatewayFrame(
    GatewayOperation Operation, long? Sequence, string? Event, ReadOnlyMemory<byte> Data);
