using System.Text.Json;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Gateway;

/// <summary>Reads a frame's envelope without reading its payload.</summary>
internal static class FrameReader
{
    public static bool TryRead(ReadOnlyMemory<byte> utf8, out GatewayFrame frame)
    {
        try
        {
            return TryReadObject(utf8, out frame);
        }
        catch (JsonException)
        {
            frame = default;
            return false;
        }
    }

    private static bool TryReadObject(ReadOnlyMemory<byte> utf8, out GatewayFrame frame)
    {
        var reader = new Utf8JsonReader(utf8.Span);
        int? operation = null;
        long? sequence = null;
        string? name = null;
        var data = ReadOnlyMemory<byte>.Empty;
        frame = default;
        if (!reader.Read() || reader.TokenType is not JsonTokenType.StartObject)
        {
            return false;
        }

        while (reader.Read() && reader.TokenType is JsonTokenType.PropertyName)
        {
            if (reader.ValueTextEquals("d"u8))
            {
                data = SkipValue(ref reader, utf8);
            }
            else if (reader.ValueTextEquals("op"u8))
            {
                operation = ReadNumber(ref reader) is { } number and >= 0 and <= int.MaxValue ? (int)number : null;
            }
            else if (reader.ValueTextEquals("s"u8))
            {
                sequence = ReadNumber(ref reader);
            }
            else if (reader.ValueTextEquals("t"u8))
            {
                name = ReadName(ref reader);
            }
            else
            {
                SkipValue(ref reader, utf8);
            }
        }

        frame = new GatewayFrame((GatewayOperation)(operation ?? -1), sequence, name, data);
        return operation is not null && reader.TokenType is JsonTokenType.EndObject && !reader.Read();
    }

    private static ReadOnlyMemory<byte> SkipValue(ref Utf8JsonReader reader, ReadOnlyMemory<byte> utf8)
    {
        reader.Read();
        var start = (int)reader.TokenStartIndex;
        reader.Skip();
        return utf8[start..(int)reader.BytesConsumed];
    }

    private static long? ReadNumber(ref Utf8JsonReader reader)
    {
        reader.Read();
        var read = reader.TokenType is JsonTokenType.Number && reader.TryGetInt64(out var value) ? value : (long?)null;
        reader.Skip();
        return read;
    }

    private static string? ReadName(ref Utf8JsonReader reader)
    {
        reader.Read();
        if (reader.TokenType is not JsonTokenType.String)
        {
            reader.Skip();
            return null;
        }

        return reader.ValueTextEquals("INTERACTION_CREATE"u8) ? GatewayEvents.Interaction : reader.GetString();
    }
}
