using System.Text.Json;
using System.Text.Json.Serialization;

namespace CrewBot.Core.Knowledge;

/// <summary>Reads one of a few fixed names, written in lower case with hyphens, such as <c>live-fish</c>.</summary>
/// <typeparam name="T">The names.</typeparam>
internal sealed class NameJsonConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    private static readonly Dictionary<string, T> ByName =
        Enum.GetValues<T>().ToDictionary(value => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()));

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Find(reader.TokenType == JsonTokenType.String ? reader.GetString()! : "");

    public override T ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Find(reader.GetString()!);

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        throw new NotSupportedException("Knowledge is read, never written.");

    private static T Find(string name) => ByName.TryGetValue(name, out var value)
        ? value
        : throw new UnfitValueException($"'{name}' is not one of: {string.Join(", ", ByName.Keys)}.");
}
