using CrewBot.Core.Knowledge;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>A jig, lure or sinker of one weight and material.</summary>
/// <param name="Presentation">How it is fished.</param>
/// <param name="Weight">Its mass.</param>
/// <param name="Material">What it is made of.</param>
public sealed record Lure(Presentation Presentation, Mass Weight, LureMaterial Material)
{
    /// <summary>Density of the whole body.</summary>
    public Density Density => Presentation.BodyDensity ?? Material.Density;

    /// <summary>Whether it is of plain metal, which is then worth naming.</summary>
    public bool IsPlainMetal => Presentation.BodyDensity is null;

    /// <summary>The body at the slow end of how such lures fall.</summary>
    public SinkingBody Slow => new(Weight, Density, Presentation.Fall.Low);

    /// <summary>The body at the fast end of how such lures fall.</summary>
    public SinkingBody Fast => new(Weight, Density, Presentation.Fall.High);
}
