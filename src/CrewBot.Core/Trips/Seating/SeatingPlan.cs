namespace CrewBot.Core.Trips.Seating;

/// <summary>Who sits where.</summary>
/// <param name="Places">The key of a shelter for each person's key.</param>
/// <param name="Cost">What it costs the crew.</param>
/// <param name="Bound">No seating costs less than this.</param>
public sealed record SeatingPlan(IReadOnlyDictionary<string, string> Places, SeatingCost Cost, SeatingCost Bound)
{
    /// <summary>Is it proven that no seating is better?</summary>
    public bool IsOptimal => Cost == Bound;

    /// <summary>The wishes that it does not meet.</summary>
    public required IReadOnlyList<SeatingWish> Unmet { get; init; }

    /// <summary>Keys of those who asked for smoke-free air and sit with a smoker.</summary>
    public required IReadOnlyList<string> InSmoke { get; init; }

    /// <summary>Keys of those who sit elsewhere than they were told.</summary>
    public required IReadOnlyList<string> Moved { get; init; }

    /// <summary>Keys of the shelters to haul.</summary>
    public required IReadOnlyList<string> Hauled { get; init; }
}
