namespace CrewBot.Core.Knowledge;

/// <summary>What the height of the lure is measured from.</summary>
public enum StationNear
{
    /// <summary>Up from the bottom.</summary>
    Bottom,

    /// <summary>Up from the fish, wherever they hang.</summary>
    Fish,

    /// <summary>Down from the ice.</summary>
    Ice,
}
