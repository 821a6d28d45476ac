using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What somebody who breaks through has, about: the 1-10-1 principle of G. Giesbrecht.</summary>
/// <remarks>
/// As taught with the US Coast Guard Auxiliary and Canadian safe-boating bodies. The hour holds only for who floats: without
/// flotation most drown long before they are cold.
/// </remarks>
public static class ColdWater
{
    public static Duration ToControlBreathing { get; } = Duration.FromMinutes(1);

    public static Duration OfUsefulMovement { get; } = Duration.FromMinutes(10);

    public static Duration UntilUnconscious { get; } = Duration.FromHours(1);
}
