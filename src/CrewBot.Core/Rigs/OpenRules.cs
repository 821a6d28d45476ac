using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Rigs;

/// <summary>Finds which rules of the water touch a rig and are not known.</summary>
internal static class OpenRules
{
    /// <summary>The rules to look up, in words: unknown is never permission.</summary>
    public static IReadOnlyList<string> For(WaterRules? rules, Presentation presentation, LureMaterial material, Bait? bait)
    {
        var unknown = new List<string>();
        if (rules?.Lines is null)
        {
            unknown.Add("lines");
        }

        if (presentation.Trebles > 0 && rules?.TreblesPerLine is null)
        {
            unknown.Add("trebles");
        }
        else if (presentation.Hooks > 1 && rules?.HooksPerLine is null)
        {
            unknown.Add("hooks");
        }

        if (rules?.BarblessOnly is null)
        {
            unknown.Add("barbs");
        }

        if (bait is { Kind: not BaitKind.Soft } && rules?.Baits is null)
        {
            unknown.Add(bait.Kind == BaitKind.LiveFish ? "live bait" : "bait");
        }

        if (material.Lead && rules?.LeadBanned is null)
        {
            unknown.Add("lead");
        }

        return unknown;
    }
}
