using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>One lure weight made in two materials, such as lead and tungsten.</summary>
/// <param name="Usual">Density of the material at hand, above 0 and at most 23 g/cm³.</param>
/// <param name="Other">Density of the one it is held against, in the same range.</param>
/// <param name="Mass">Mass of the lure in the usual material, above 0 and at most 400 g.</param>
/// <remarks>
/// Solid spheres: equal mass means diameters as the inverse cube root of density; equal size, masses as density.
/// </remarks>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
public sealed record MaterialComparison(Density Usual, Density Other, Mass Mass)
{
    /// <summary>Density of the material at hand.</summary>
    public Density Usual { get; } = Usual;

    /// <summary>Density of the material that it is held against.</summary>
    public Density Other { get; } = Other;

    /// <summary>Mass of the lure in the usual material.</summary>
    public Mass Mass { get; } = Mass;

    /// <summary>Diameter in the usual material.</summary>
    public Length UsualDiameter { get; } = new SinkingBody(Mass, Usual).Diameter;

    /// <summary>Diameter of the same mass in the other material.</summary>
    public Length OtherDiameter { get; } = new SinkingBody(Mass, Other).Diameter;

    /// <summary>Mass of the same body, no bigger and no smaller, in the other material.</summary>
    public Mass OtherMassAtSameSize { get; } = Mass * (Other.KilogramsPerCubicMeter / Usual.KilogramsPerCubicMeter);
}
