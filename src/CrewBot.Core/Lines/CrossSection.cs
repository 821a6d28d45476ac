using UnitsNet;

namespace CrewBot.Core.Lines;

internal static class CrossSection
{
    /// <summary>Area of the nominal circle that is solid material, m².</summary>
    public static double SolidSquareMetres(Length diameter, double solidFraction, string parameter) =>
        Math.PI / 4 * diameter.Meters * diameter.Meters
            * ValidRange.Positive(solidFraction, 1, "of the circle", parameter);
}
