namespace CrewBot.Core.Knowledge;

/// <summary>What a piece of gear is there for.</summary>
public enum GearFamily
{
    Shelter,
    Heater,
    CoAlarm,
    Auger,
    Sled,

    /// <summary>What pulls sleds over the ice: a snowmobile, a small all-terrain vehicle.</summary>
    Machine,

    /// <summary>What drives to the water and stays ashore.</summary>
    Vehicle,
    Sonar,
    Rod,
    Picks,
    ThrowRope,
    SpudBar,
    FirstAid,
    Blanket,
    Bait,
    Food,
    Stove,
    Other,
}
