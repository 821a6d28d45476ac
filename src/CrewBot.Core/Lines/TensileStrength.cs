using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Breaking force against strength of the material, both ways: F = σ A φ.</summary>
public static class TensileStrength
{
    /// <summary>Computes the force at which straight, unknotted line breaks.</summary>
    /// <param name="strength">Tensile strength of the solid material, above 0.</param>
    /// <param name="diameter">Diameter, above 0.</param>
    /// <param name="solidFraction">Share of the nominal circle that is solid, above 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Force BreakingForce(Pressure strength, Length diameter, double solidFraction)
    {
        ValidRange.Positive(strength.Pascals, "Pa", nameof(strength));
        ValidRange.Positive(diameter.Meters, "m", nameof(diameter));
        return Force.FromNewtons(
            strength.Pascals * CrossSection.SolidSquareMetres(diameter, solidFraction, nameof(solidFraction)));
    }

    /// <summary>
    /// Computes the strength that a label's test and diameter imply, a check on a table that was typed in.
    /// </summary>
    /// <param name="test">The test on the label, above 0. Nylon comes out at 500–750 MPa.</param>
    /// <param name="diameter">The diameter on the label, above 0.</param>
    /// <param name="solidFraction">Share of the nominal circle that is solid, above 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Pressure ImpliedBy(Force test, Length diameter, double solidFraction)
    {
        ValidRange.Positive(test.Newtons, "N", nameof(test));
        ValidRange.Positive(diameter.Meters, "m", nameof(diameter));
        return Pressure.FromPascals(
            test.Newtons / CrossSection.SolidSquareMetres(diameter, solidFraction, nameof(solidFraction)));
    }
}
