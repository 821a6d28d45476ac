namespace CrewBot.Core.Knowledge;

/// <summary>Something that a trip needs, and how much of it.</summary>
public sealed record NeedRule : TradeRecord
{
    /// <summary>The gear that meets it.</summary>
    public required GearFamily Family { get; init; }

    public required NeedBasis Basis { get; init; }

    /// <summary>How many people or heaters one piece serves; 1 to 20.</summary>
    public int Per { get; init; } = 1;

    /// <summary>Nobody can waive it.</summary>
    public bool IsSafety { get; init; }

    /// <summary>Why, in a sentence.</summary>
    public required string Why { get; init; }
}
