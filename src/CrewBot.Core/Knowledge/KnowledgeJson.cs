using System.Text.Json.Serialization;

namespace CrewBot.Core.Knowledge;

/// <summary>How knowledge records are written as JSON.</summary>
[JsonSerializable(typeof(Species))]
[JsonSerializable(typeof(Presentation))]
[JsonSerializable(typeof(Bait))]
[JsonSerializable(typeof(Outfit))]
[JsonSerializable(typeof(LineMaterial))]
[JsonSerializable(typeof(LureMaterial))]
[JsonSerializable(typeof(Knot))]
[JsonSerializable(typeof(Hardware))]
[JsonSerializable(typeof(HookRating))]
[JsonSerializable(typeof(SplitShot))]
[JsonSerializable(typeof(BreakSign))]
[JsonSerializable(typeof(WaterRules))]
internal sealed partial class KnowledgeJson : JsonSerializerContext
{
    /// <summary>The context with the converters that quantities, hook sizes and names need.</summary>
    public static KnowledgeJson Strict { get; } = new(KnowledgeFormat.CreateOptions());
}
