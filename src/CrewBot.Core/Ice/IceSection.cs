using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>What was measured in one hole: solid ice only, neither slush nor snow.</summary>
/// <param name="Clear">Of new clear ice.</param>
/// <param name="White">Of white ice.</param>
/// <param name="Unsorted">Of ice that nobody named.</param>
/// <param name="Weak">A kind that counts as none, if it is there; null when nobody said so.</param>
public sealed record IceSection(Length Clear, Length White, Length Unsorted, IceKind? Weak = null)
{
    /// <summary>Thicker lake ice than this is a slip of the digit or the unit: judgement.</summary>
    public static Length Thickest { get; } = Length.FromMeters(2.5);

    /// <summary>All solid ice, whatever its kind.</summary>
    public Length Total => IceLength.Of(IceLength.Measured(Clear) + IceLength.Measured(White) + IceLength.Measured(Unsorted));

    /// <summary>Whether all of it is clear ice, which counts as it is.</summary>
    public bool IsClear => Weak is null && IceLength.Measured(White) + IceLength.Measured(Unsorted) == 0;

    /// <summary>
    /// The thickness of clear ice it counts as: clear in full, white and unnamed ice by half; none where weak ice is in it.
    /// </summary>
    /// <remarks>
    /// US Army TM 5-852-1 counts an inch of snow ice as half an inch of clear; Minnesota DNR and Ontario double their tables
    /// for white ice. Guides differ (National Research Council Canada, Barrette 2015); this project halves.
    /// </remarks>
    public Length Effective => Weak is null
        ? IceLength.Of(IceLength.Measured(Clear) + ((IceLength.Measured(White) + IceLength.Measured(Unsorted)) / 2))
        : Length.Zero;

    /// <summary>One thickness of one kind.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not from 0 to <see cref="Thickest"/>.</exception>
    public static IceSection Of(IceKind kind, Length thickness)
    {
        ValidRange.Closed(thickness.Meters, 0, Thickest.Meters, "m", nameof(thickness));
        return kind switch
        {
            IceKind.Clear => new(thickness, Length.Zero, Length.Zero),
            IceKind.White => new(Length.Zero, thickness, Length.Zero),
            IceKind.Unknown => new(Length.Zero, Length.Zero, thickness),
            _ => new(Length.Zero, Length.Zero, thickness, kind),
        };
    }
}
