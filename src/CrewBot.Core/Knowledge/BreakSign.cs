namespace CrewBot.Core.Knowledge;

/// <summary>What a broken end says about the link that failed.</summary>
public sealed record BreakSign : TradeRecord
{
    /// <summary>Where along the rig the end is.</summary>
    public required BreakPlace Place { get; init; }

    /// <summary>How the end looks.</summary>
    public required BreakLook Look { get; init; }

    /// <summary>The likely link and cause, in a sentence.</summary>
    public required string Cause { get; init; }

    /// <summary>What to do differently on the next rig, in a sentence.</summary>
    public required string Fix { get; init; }
}
