using System.Text.Json.Serialization;

namespace CrewBot.Storage.Catches;

[JsonSerializable(typeof(CatchRow))]
internal sealed partial class CatchJson : JsonSerializerContext;
