using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>A line of one material and test.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Test">What its label says it holds.</param>
public sealed record LineChoice(LineMaterial Material, Force Test)
{
    /// <summary>Nominal diameter, from the material's table.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The table does not reach that test.</exception>
    public Length Diameter => Material.Table.DiameterAt(Test);

    /// <summary>The same line as the water feels it.</summary>
    public LineInWater InWater => new(Diameter, Material.Density);

    /// <summary>The same line as a spring, at the middle of its material's range of stiffness.</summary>
    public ElasticLine Elastic => new(Diameter, (Material.Modulus.Low + Material.Modulus.High) / 2, Material.SolidFraction);
}
