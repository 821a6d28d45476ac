using System.Text.Json.Nodes;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>Lays stated fields over known ones, as RFC 7396 (JSON Merge Patch) has it.</summary>
internal static class MergePatch
{
    /// <summary>Objects merge field by field, null takes a field away, anything else replaces.</summary>
    public static void Apply(JsonObject target, JsonObject patch)
    {
        foreach (var (field, stated) in patch)
        {
            switch (stated)
            {
                case null:
                    target.Remove(field);
                    break;
                case JsonObject inner:
                    if (target[field] is not JsonObject below)
                    {
                        target[field] = below = [];
                    }

                    Apply(below, inner);
                    break;
                default:
                    target[field] = stated.DeepClone();
                    break;
            }
        }
    }
}
