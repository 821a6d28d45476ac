using System.Text.Json.Serialization;

namespace CrewBot.Discord.Mapping;

[JsonSerializable(typeof(Dictionary<string, string>))]
internal sealed partial class FrenchJson : JsonSerializerContext;
