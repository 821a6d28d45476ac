using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;

namespace CrewBot.Storage.Breaks;

/// <summary>A break-off as it was reported.</summary>
public sealed record BreakOff
{
    /// <summary>Number of the angler.</summary>
    public required long MemberId { get; init; }

    public required BreakPlace Place { get; init; }

    public required BreakLook Look { get; init; }

    public required DateTimeOffset BrokeAt { get; init; }

    /// <summary>Key of the knot that was there; null when nobody said.</summary>
    public string? Knot { get; init; }

    /// <summary>Key of the material that parted; null when nobody said.</summary>
    public string? Line { get; init; }

    /// <summary>What that line's label says it holds, as the mass it names.</summary>
    public ExactMass? Test { get; init; }

    /// <summary>What a scale read when it parted, as the mass it shows; null when nobody measured.</summary>
    public ExactMass? Pull { get; init; }
}
