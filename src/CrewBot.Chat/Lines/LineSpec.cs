using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Chat.Lines;

/// <summary>A line as someone names it: material and test, or material and diameter.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Diameter">Given, or from the material's table.</param>
/// <param name="Test">Given, or from the material's table; null where the table does not reach.</param>
/// <param name="Length">How long a piece; null unless it was said.</param>
public sealed record LineSpec(LineMaterial Material, Length Diameter, Force? Test, Length? Length)
{
    public LineInWater InWater => new(Diameter, Material.Density);

    /// <summary>The line as a rig knows it.</summary>
    /// <exception cref="InvalidOperationException">Its test is not known.</exception>
    public LineChoice Choice => new(Material, Test ?? throw new InvalidOperationException("The line's test is not known."));
}
