namespace CrewBot.Core.Ice;

/// <summary>A water in the table of growth coefficients.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Least">The lower coefficient.</param>
/// <param name="Most">The upper coefficient.</param>
public sealed record GrowthSetting(string Name, StefanCoefficient Least, StefanCoefficient Most)
{
    /// <summary>US Army Corps of Engineers EM 1110-2-1612 and CRREL TN 04-3, as quoted in public code.</summary>
    public static IReadOnlyList<GrowthSetting> All { get; } =
    [
        new("windy lake, no snow", new(2.7), new(2.7)),
        new("average lake with snow", new(1.7), new(2.4)),
        new("average river with snow", new(1.4), new(1.7)),
        new("sheltered small river", new(0.7), new(1.4)),
    ];
}
