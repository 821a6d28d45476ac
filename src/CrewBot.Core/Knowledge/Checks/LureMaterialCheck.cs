using UnitsNet;

namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a lure material.</summary>
internal static class LureMaterialCheck
{
    public static IEnumerable<Misfit> Misfits(LureMaterial material) => DensityMisfits(material.Density);

    /// <summary>No solid that is fished is lighter than a float's or denser than osmium.</summary>
    public static IEnumerable<Misfit> DensityMisfits(Density density)
    {
        if (density.GramsPerCubicCentimeter is not (>= 0.5 and <= 23))
        {
            yield return new("density", "It lies from 0.5 to 23 g/cm3: check the unit.");
        }
    }
}
