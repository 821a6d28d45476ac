using CrewBot.Core.Fish;

namespace CrewBot.Core.Knowledge;

/// <summary>The length categories of a species, as published for either family of units.</summary>
public sealed record LengthCategoryTables
{
    public required LengthBounds Metric { get; init; }

    public required LengthBounds Inch { get; init; }

    public required string Source { get; init; }

    /// <summary>The table that belongs to the unit an angler measured in.</summary>
    public LengthBounds For(UnitFamily family) => family == UnitFamily.Metric ? Metric : Inch;
}
