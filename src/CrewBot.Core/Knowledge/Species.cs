using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>A fish that is caught through the ice, and what it asks of a rig.</summary>
public sealed record Species : TradeRecord
{
    public required SizeClass Class { get; init; }

    /// <summary>What one weighs in winter.</summary>
    public required BySize<Mass> Weights { get; init; }

    /// <summary>What one measures, nose to tail.</summary>
    public required BySize<Length> Lengths { get; init; }

    /// <summary>What it weighs at a length in good condition; null where no equation is known.</summary>
    public StandardWeightEquation? StandardWeight { get; init; }

    /// <summary>Its length categories; null where none are published.</summary>
    public LengthCategoryTables? LengthCategories { get; init; }

    /// <summary>
    /// Length × girth² in cubic inches to the pound; null for the usual <see cref="Fish.GirthEstimate.UsualDivisor"/>.
    /// </summary>
    public double? GirthDivisor { get; init; }

    /// <summary>Body depth as a share of total length: what has to pass the hole in deep-bodied fish.</summary>
    public required double BodyDepthShare { get; init; }

    public required Teeth Teeth { get; init; }

    /// <summary>Tears easily: light drag, no hard strike.</summary>
    public bool SoftMouth { get; init; }

    public required Shyness LineShyness { get; init; }

    /// <summary>When it bites, as the end of a sentence: "dusk, dawn and after dark".</summary>
    public required string Light { get; init; }

    public required DepthBand Depth { get; init; }

    public required Station Station { get; init; }

    /// <summary>
    /// From here down a fish brought up is likely to be hurt by the pressure change, its gas bladder being closed; null
    /// where none is established.
    /// </summary>
    public Length? BarotraumaDepth { get; init; }

    /// <summary>Single hooks, smallest and largest in use for it.</summary>
    public required Spread<HookSize> Hooks { get; init; }

    /// <summary>Presentation keys, first choice first.</summary>
    public required ByMood<IReadOnlyList<string>> Presentations { get; init; }

    /// <summary>Bait keys, first choice first.</summary>
    public required IReadOnlyList<string> Baits { get; init; }
}
