using UnitsNet;

namespace CrewBot.Core.Lines;

/// <summary>Strength of the material behind a label: σ = F/(A φ).</summary>
public static class TensileStrength
{
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
