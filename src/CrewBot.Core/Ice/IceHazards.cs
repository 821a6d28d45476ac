namespace CrewBot.Core.Ice;

/// <summary>What a hazard does to an answer.</summary>
public static class IceHazards
{
    /// <summary>Whether it blocks its named place until a steward closes it with a reason and a new measurement.</summary>
    public static bool Blocks(this IceHazard hazard) => hazard != IceHazard.Crack;

    /// <summary>Whether it goes out at once and notifies.</summary>
    public static bool IsUrgent(this IceHazard hazard) => hazard is IceHazard.BrokeThrough or IceHazard.OpenWater;
}
