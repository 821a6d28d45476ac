namespace CrewBot.Core.Trips.Seating;

/// <summary>What a seating costs the crew; less of the first outweighs any amount of the next.</summary>
/// <param name="Moved">People who sit elsewhere than they were told.</param>
/// <param name="Unmet">Wishes not met.</param>
/// <param name="InSmoke">People who asked for smoke-free air and sit with a smoker.</param>
/// <param name="Hauled">Shelters to be hauled.</param>
public readonly record struct SeatingCost(int Moved, int Unmet, int InSmoke, int Hauled) : IComparable<SeatingCost>
{
    public static bool operator <(SeatingCost left, SeatingCost right) => left.CompareTo(right) < 0;

    public static bool operator >(SeatingCost left, SeatingCost right) => left.CompareTo(right) > 0;

    public static bool operator <=(SeatingCost left, SeatingCost right) => left.CompareTo(right) <= 0;

    public static bool operator >=(SeatingCost left, SeatingCost right) => left.CompareTo(right) >= 0;

    public int CompareTo(SeatingCost other) =>
        (Moved, Unmet, InSmoke, Hauled).CompareTo((other.Moved, other.Unmet, other.InSmoke, other.Hauled));
}
