using System.Buffers.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CrewBot.Discord.Wire;

/// <summary>Reads an id given as a string or, by some compatible servers, as a number; writes a string.</summary>
internal sealed class SnowflakeConverter : JsonConverter<Snowflake>
{
    private const int MostDigits = 20;

    public override Snowflake Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType switch
        {
            JsonTokenType.Number when reader.TryGetUInt64(out var number) => new Snowflake(number),
            JsonTokenType.String => ReadText(ref reader),
            _ => throw new JsonException("An id must be a decimal string."),
        };

    public override Snowflake ReadAsPropertyName(
        ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => ReadText(ref reader);

    public override void Write(Utf8JsonWriter writer, Snowflake value, JsonSerializerOptions options)
    {
        Span<byte> digits = stackalloc byte[MostDigits];
        Utf8Formatter.TryFormat(value.Value, digits, out var length);
        writer.WriteStringValue(digits[..length]);
    }

    public override void WriteAsPropertyName(Utf8JsonWriter writer, Snowflake value, JsonSerializerOptions options)
    {
        Span<byte> digits = stackalloc byte[MostDigits];
        Utf8Formatter.TryFormat(value.Value, digits, out var length);
        writer.WritePropertyName(digits[..length]);
    }

    private static Snowflake ReadText(ref Utf8JsonReader reader) =>
        (reader is { HasValueSequence: false, ValueIsEscaped: false } && Snowflake.TryParse(reader.ValueSpan, out var id))
        || Snowflake.TryParse(reader.GetString(), out id)
            ? id
            : throw new JsonException("An id must be a decimal string.");
}
