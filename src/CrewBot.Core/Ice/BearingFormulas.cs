using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// The two published formulas that may raise a required thickness. Neither may lower one, and neither is for people on foot.
/// </summary>
public static class BearingFormulas
{
    // P = A h², P in kg, h in cm.
    private const double GoldKilogramsPerSquareCentimetre = 3.5;

    // t = 4 Sf √W with Sf = 2, t in inches, W in short tons of 2000 lb.
    private const double SmithInches = 8;

    /// <summary>Thickness for a moving load: √(P/3.5) cm, P in kg.</summary>
    /// <param name="load">From 0 to 100 t.</param>
    /// <remarks>
    /// L. W. Gold (1971), Canadian Geotechnical Journal 8, P = A h² with A = 3.5 kg/cm²: the load at which the lowest reported
    /// failures began, not one below which nothing fails. Not for heavy tracked machines, and never for parked loads.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="load"/> lies outside its range.</exception>
    public static Length Moving(Mass load) =>
        Length.FromCentimeters(Math.Sqrt(Kilograms(load) / GoldKilogramsPerSquareCentimetre));

    /// <summary>Thickness for what stands, camps or gathers: 8 √W in, W in short tons.</summary>
    /// <param name="load">Everything within the group's spot, from 0 to 100 t.</param>
    /// <remarks>O. P. Smith, University of Alaska Anchorage (2004), t = 4 Sf √W with Sf = 2.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="load"/> lies outside its range.</exception>
    public static Length Standing(Mass load) =>
        Length.FromInches(SmithInches * Math.Sqrt(Mass.FromKilograms(Kilograms(load)).ShortTons));

    private static double Kilograms(Mass load) => ValidRange.Closed(load.Kilograms, 0, 100_000, "kg", nameof(load));
}
