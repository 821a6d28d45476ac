using System.Text.Json.Serialization;

namespace CrewBot.Storage.Trips;

[JsonSerializable(typeof(TripPages))]
[JsonSerializable(typeof(TripItem))]
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault)]
internal sealed partial class TripJson : JsonSerializerContext;
