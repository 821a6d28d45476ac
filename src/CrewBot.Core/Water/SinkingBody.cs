using UnitsNet;

namespace CrewBot.Core.Water;

/// <summary>A lure, weight or bait in the water, reckoned as the sphere of its own volume.</summary>
/// <param name="Mass">
/// Mass, above 0 and at most 400 g: the heaviest that keeps within the drag correlation whatever it is made of, in
/// water up to 30 °C.
/// </param>
/// <param name="Density">Mean density, above 0 and at most 23 g/cm³.</param>
/// <param name="SpeedShare">
/// Terminal speed as a share of the bare sphere's, from 0.05 to 1. A bare round head has 1; dressed, flat and
/// fluttering bodies fall at half of it or less (judgement, no published source: give it as a range).
/// </param>
/// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
public sealed record SinkingBody(Mass Mass, Density Density, double SpeedShare = 1)
{
    private const double MaxGrams = 400;
    private const double MaxKilogramsPerCubicMetre = 23_000; // above osmium, the densest element
    private const double MinSpeedShare = 0.05;

    /// <summary>Mass in air.</summary>
    public Mass Mass { get; init => field = CheckedMass(value); } = CheckedMass(Mass);

    /// <summary>Mean density.</summary>
    public Density Density { get; init => field = CheckedDensity(value); } = CheckedDensity(Density);

    /// <summary>Terminal speed as a share of the bare sphere's.</summary>
    public double SpeedShare { get; init => field = CheckedShare(value); } = CheckedShare(SpeedShare);

    /// <summary>Diameter of the sphere of equal volume.</summary>
    public Length Diameter => Length.FromMeters(DiameterInMetres);

    internal double DiameterInMetres => Math.Cbrt(6 * VolumeInCubicMetres / Math.PI);

    internal double VolumeInCubicMetres => Mass.Kilograms / Density.KilogramsPerCubicMeter;

    /// <summary>Weight less buoyancy; zero or negative for a body that does not sink.</summary>
    /// <param name="water">Density of the water.</param>
    public Force SubmergedWeightIn(Density water) =>
        Force.FromNewtons(SubmergedNewtonsIn(water.KilogramsPerCubicMeter));

    internal double SubmergedNewtonsIn(double waterDensity) =>
        Mass.Kilograms * Gravity.Standard * (1 - (waterDensity / Density.KilogramsPerCubicMeter));

    private static Mass CheckedMass(Mass mass)
    {
        ValidRange.Positive(mass.Grams, MaxGrams, "g", nameof(Mass));
        return mass;
    }

    private static Density CheckedDensity(Density density)
    {
        ValidRange.Positive(density.KilogramsPerCubicMeter, MaxKilogramsPerCubicMetre, "kg/m³", nameof(Density));
        return density;
    }

    private static double CheckedShare(double share) =>
        ValidRange.Closed(share, MinSpeedShare, 1, "of the sphere's speed", nameof(SpeedShare));
}
