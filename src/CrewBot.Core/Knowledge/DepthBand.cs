using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>Where in the depths a species is looked for in winter.</summary>
public sealed record DepthBand
{
    public required Length From { get; init; }

    public required Length To { get; init; }

    /// <summary>The depth to assume when nobody says.</summary>
    public required Length Usual { get; init; }
}
