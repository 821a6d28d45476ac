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

    /// <summary>
    /// Drag on line that is drawn down through still water along its own length, behind a sinking lure.
    /// </summary>
    /// <param name="length">Line in the water, above 0 and at most 200 m.</param>
    /// <param name="speed">Speed of the fall, above 0 and at most 5 m/s.</param>
    /// <param name="water">Water temperature, from 0 to 30 °C inclusive.</param>
    /// <returns>The drag, uncertain by about 25 %.</returns>
    /// <remarks>Laminar layer on a long thin cylinder, after Glauert and Lighthill (1955).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public Force FallingDrag(Length length, Speed speed, Temperature water)
    {
        ValidRange.Positive(length.Meters, 200, "m", nameof(length));
        ValidRange.Positive(speed.MetersPerSecond, 5, "m/s", nameof(speed));
        var falling = new FallingLine(this, FreshWater.StateAt(water));
        return Force.FromNewtons(falling.DragAt(length.Meters, speed.MetersPerSecond, out _, out _));
    }

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
