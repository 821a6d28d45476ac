using UnitsNet;

namespace CrewBot.Core.Fish;

/// <summary>From one weight to another, both included.</summary>
public sealed record WeightRange(Mass Low, Mass High)
{
    public bool Contains(Mass weight) => weight >= Low && weight <= High;
}
