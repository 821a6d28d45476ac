using System.Text.Json.Serialization;
using CrewBot.Discord.Gateway;

namespace CrewBot.Discord.Wire;

/// <summary>
/// Reads and writes every wire shape. Unknown fields are skipped, missing and null ones become null, and what the bot
/// writes leaves nulls out: on an edit, absent means "keep".
/// </summary>
/// <remarks>
/// What every answer takes is shaped for the generated code: it collects the values of init-only properties in boxes before
/// it makes the object, so the parts of an interaction can be set, and it goes through a <see cref="List{T}"/> by index, so
/// the parts of a card are such lists.
/// </remarks>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(Interaction))]
[JsonSerializable(typeof(Ready))]
[JsonSerializable(typeof(SavedSessions))]
[JsonSerializable(typeof(Hello))]
[JsonSerializable(typeof(GatewayAdvice))]
[JsonSerializable(typeof(Application))]
[JsonSerializable(typeof(User))]
[JsonSerializable(typeof(Channel))]
[JsonSerializable(typeof(Guild))]
[JsonSerializable(typeof(Member))]
[JsonSerializable(typeof(Message))]
[JsonSerializable(typeof(RateLimitBody))]
[JsonSerializable(typeof(ErrorBody))]
[JsonSerializable(typeof(CommandDefinition[]))]
[JsonSerializable(typeof(MessageBody))]
[JsonSerializable(typeof(ThreadBody))]
[JsonSerializable(typeof(DirectChannelBody))]
[JsonSerializable(typeof(MessageResponse))]
[JsonSerializable(typeof(DeferredResponse))]
[JsonSerializable(typeof(ChoicesResponse))]
[JsonSerializable(typeof(ModalResponse))]
[JsonSerializable(typeof(OutgoingFrame<long?>), TypeInfoPropertyName = "HeartbeatFrame")]
[JsonSerializable(typeof(OutgoingFrame<Identify>), TypeInfoPropertyName = "IdentifyFrame")]
[JsonSerializable(typeof(OutgoingFrame<Resume>), TypeInfoPropertyName = "ResumeFrame")]
internal sealed partial class WireJson : JsonSerializerContext;
