using System.Text.Json;
using System.Text.Json.Serialization;
using CrewBot.Core.Rigs;

namespace CrewBot.Core.Knowledge;

/// <summary>Reads a hook size written as the trade writes it: <c>"6"</c> or <c>"2/0"</c>.</summary>
internal sealed class HookSizeJsonConverter : JsonConverter<HookSize>
{
    public override HookSize Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString()! : "";
        return HookSize.TryParse(text, out var size)
            ? size
            : throw new UnfitValueException($"'{text}' is no hook size; write it as text, such as \"6\" or \"2/0\".");
    }

    public override void Write(Utf8JsonWriter writer, HookSize value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Knowledge is read, never written.");
}
