namespace CrewBot.Core.Fish;

/// <summary>Whether a fish has a standard weight, and if not, why.</summary>
public enum StandardWeightStatus
{
    Computed,

    /// <summary>It is shorter than the equation reaches.</summary>
    BelowMinimumLength,

    /// <summary>No equation is known for its species.</summary>
    NoEquation,
}
