using System.Text.Json.Serialization;

namespace CrewBot.Discord.Wire;

/// <summary>A frame to the gateway: operation and payload.</summary>
internal sealed record OutgoingFrame<T>(
    GatewayOperation Op,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] T D);
