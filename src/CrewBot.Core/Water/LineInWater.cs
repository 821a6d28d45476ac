using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>Fishing line as the water sees it.</summary>
/// <param name="Diameter">
/// Diameter, from 0.02 to 1 mm: thin enough for the laminar layer that the drag on falling line assumes.
/// </param>
/// <param name="Density">
/// Mean density, from 0.5 to 9 g/cm³ (polyethylene braid floats at 0.97, nylon 1.14, PVDF 1.78, steel near 7.9).
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
public sealed record LineInWater(Length Diameter, Density Density)
{
    /// <summary>Diameter of the line.</summary>
    public Length Diameter { get; init => field = CheckedDiameter(value); } = CheckedDiameter(Diameter);

    /// <summary>Mean density of the line.</summary>
    public Density Density { get; init => field = CheckedDensity(value); } = CheckedDensity(Density);

    /// <summary>Weight less buoyancy of a length of line; negative for a line that floats.</summary>
    /// <param name="water">Density of the water.</param>
    public ForcePerLength SubmergedWeightIn(Density water) =>
        ForcePerLength.FromNewtonsPerMeter(SubmergedNewtonsPerMetreIn(water.KilogramsPerCubicMeter));

    internal double SubmergedNewtonsPerMetreIn(double waterDensity)
    {
        var diameter = Diameter.Meters;
        return (Density.KilogramsPerCubicMeter - waterDensity) * Gravity.Standard * Math.PI * diameter * diameter / 4;
    }

    private static Length CheckedDiameter(Length diameter)
    {
        ValidRange.Closed(diameter.Millimeters, 0.02, 1, "mm", nameof(Diameter));
        return diameter;
    }

    private static Density CheckedDensity(Density density)
    {
        ValidRange.Closed(density.KilogramsPerCubicMeter, 500, 9000, "kg/m³", nameof(Density));
        return density;
    }
}
