using System.Text.Json.Serialization;

namespace CrewBot.Storage.Ice;

[JsonSerializable(typeof(IcePage))]
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
internal sealed partial class IceJson : JsonSerializerContext;
