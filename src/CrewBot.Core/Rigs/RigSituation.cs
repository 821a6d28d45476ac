using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What a tied rig is up against. What is unknown is not judged.</summary>
public sealed record RigSituation
{
    public Species? Species { get; init; }

    public FishSize Size { get; init; } = FishSize.Typical;

    public Length? Depth { get; init; }

    public Speed Current { get; init; }

    public required Temperature Water { get; init; }
}
