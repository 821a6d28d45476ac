namespace CrewBot.Core.Knowledge;

/// <summary>What a need is reckoned from.</summary>
public enum NeedBasis
{
    /// <summary>One piece for every so many people.</summary>
    People,

    /// <summary>One seat for every person.</summary>
    Seats,

    /// <summary>One piece for every heater.</summary>
    Heaters,

    /// <summary>Room for the mass of what has to be hauled.</summary>
    Load,
}
