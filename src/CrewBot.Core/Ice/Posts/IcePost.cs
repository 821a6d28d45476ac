namespace CrewBot.Core.Ice.Posts;

/// <summary>What a person's post says about ice. What it does not say is null or empty, and never filled in.</summary>
/// <param name="Thicknesses">Each thickness that the writer says is there, in the post's order.</param>
/// <param name="Hazards">Each hazard that the writer says is there.</param>
/// <param name="UnitMissing">Numbers that would be thicknesses if a unit were said.</param>
/// <param name="Time">When it was so, the earliest if several times are said; null when the post does not say.</param>
/// <param name="IsContradictory">Whether it says less in all than in part: then nothing of its thickness can be used.</param>
public sealed record IcePost(
    IReadOnlyList<PostedThickness> Thicknesses,
    IReadOnlyList<PostedHazard> Hazards,
    IReadOnlyList<UnitlessNumber> UnitMissing,
    PostedTime? Time,
    bool IsContradictory)
{
    /// <summary>A post that says nothing about ice.</summary>
    public static IcePost Nothing { get; } = new([], [], [], null, false);

    /// <summary>Whether there is nothing to report in it.</summary>
    public bool IsEmpty => Thicknesses.Count == 0 && Hazards.Count == 0 && UnitMissing.Count == 0 && !IsContradictory;

    /// <summary>The places it tells of, in order; null among them where something is told of no place.</summary>
    public IReadOnlyList<string?> Places =>
    [
        .. Thicknesses.Select(thickness => thickness.Place)
            .Concat(Hazards.Select(hazard => hazard.Place))
            .Concat(UnitMissing.Select(number => number.Place))
            .Distinct(StringComparer.OrdinalIgnoreCase),
    ];
}
