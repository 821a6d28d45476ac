using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Line as a spring.</summary>
/// <param name="Diameter">Diameter, above 0 and at most 3 mm; for braid, of the nominal circle.</param>
/// <param name="Modulus">
/// Tensile modulus of the solid material, above 0 and at most 250 GPa. Drawn nylon 1.5–3.5 GPa and a third to a half
/// less when wet; drawn PVDF up to 4; braid 30–80 on its solid area, far below its fibre's 101–118; steel about 200.
/// </param>
/// <param name="SolidFraction">
/// Share of the nominal circle that is solid, above 0 and at most 1: monofilament 1, braid 0.6–0.8 (from memory).
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
public sealed record ElasticLine(Length Diameter, Pressure Modulus, double SolidFraction = 1)
{
    private readonly double _newtonsAtUnitStrain = NewtonsAtUnitStrain(Diameter, Modulus, SolidFraction);

    /// <summary>Diameter of the line.</summary>
    public Length Diameter { get; } = Diameter;

    /// <summary>Tensile modulus of the solid material.</summary>
    public Pressure Modulus { get; } = Modulus;

    /// <summary>Share of the nominal circle that is solid.</summary>
    public double SolidFraction { get; } = SolidFraction;

    /// <summary>Computes the strain under a pull, F/(E A φ).</summary>
    /// <param name="pull">
    /// Pull, 0 or more. Past a tenth or so of its length no line is a straight spring any more.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pull"/> is negative.</exception>
    public Ratio StrainUnder(Force pull) =>
        Ratio.FromDecimalFractions(ValidRange.NotNegative(pull.Newtons, "N", nameof(pull)) / _newtonsAtUnitStrain);

    private static double NewtonsAtUnitStrain(Length diameter, Pressure modulus, double solidFraction)
    {
        ValidRange.Positive(diameter.Millimeters, 3, "mm", nameof(Diameter));
        ValidRange.Positive(modulus.Gigapascals, 250, "GPa", nameof(Modulus));
        return modulus.Pascals * CrossSection.SolidSquareMetres(diameter, solidFraction, nameof(SolidFraction));
    }
}
