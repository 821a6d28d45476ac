using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What somebody reported of one spot. What nobody said is null, and never filled in.</summary>
public sealed record IceReport
{
    /// <summary>The number it is known by.</summary>
    public required long Number { get; init; }

    /// <summary>The named spot; null when nobody said.</summary>
    public string? Spot { get; init; }

    /// <summary>When it was measured; null when nobody said.</summary>
    public DateTimeOffset? MeasuredAt { get; init; }

    /// <summary>When it was filed.</summary>
    public required DateTimeOffset FiledAt { get; init; }

    /// <summary>Who measured; null when nobody said.</summary>
    public string? MeasuredBy { get; init; }

    /// <summary>Whether it is a measurement at all: not a guess, a rounding by eye or somebody else's word.</summary>
    public bool IsMeasured { get; init; } = true;

    /// <summary>The holes, in the order they were drilled.</summary>
    public IReadOnlyList<IceSection> Holes { get; init; } = [];

    public IReadOnlyList<IceHazard> Hazards { get; init; } = [];

    /// <summary>The air where it was measured; null when nobody said.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Whether a steward closed its bad news, with a reason and a new measurement.</summary>
    public bool Closed { get; init; }

    /// <summary>Whether a partner crew reported it: its number is one of theirs, and it counts only against the ice.</summary>
    public bool IsPartners { get; init; }

    /// <summary>The weak kind in any of its holes; null when there is none.</summary>
    public IceKind? Weak => Holes.Select(hole => hole.Weak).FirstOrDefault(weak => weak is not null);

    /// <summary>Whether it says who measured what, where and when: without that it is shown and nothing is computed from it.</summary>
    public bool CanSupport => IsMeasured && !IsPartners && Holes.Count > 0 && Spot is not null && MeasuredAt is not null && MeasuredBy is not null;

    /// <summary>Whether it is bad news, which blocks its place: a hazard, weak ice, or less than the hard stop.</summary>
    public bool IsBadNews =>
        Hazards.Any(hazard => hazard.Blocks())
        || Weak is not null
        || Holes.Any(hole => IceLength.Measured(hole.Total) < IceLength.Required(ProjectFigures.HardStop));

    /// <summary>Whether it makes the whole water a place to stay off: grey, candled, slushy or layered ice.</summary>
    public bool IsWeakIce => Weak is not null || Hazards.Contains(IceHazard.Slush);
}
