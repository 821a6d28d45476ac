namespace CrewBot.Core.Ice;

/// <summary>What would be on the ice, in the steps of the published tables.</summary>
public enum IceUse
{
    /// <summary>One person on foot, spaced out from others.</summary>
    OnFoot,

    /// <summary>Several people together, a shelter, games.</summary>
    Gathering,

    /// <summary>A snowmobile or a small ATV.</summary>
    Snowmobile,

    /// <summary>A side-by-side ATV.</summary>
    SideBySide,

    /// <summary>A small car or SUV.</summary>
    Car,

    /// <summary>A pickup or medium truck.</summary>
    Pickup,

    /// <summary>A heavy truck with a wheeled shelter.</summary>
    HeavyTruck,
}
