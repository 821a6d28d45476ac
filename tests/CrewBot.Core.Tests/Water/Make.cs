using CrewBot.Core.Tests.Published;
using CrewBot.Core.Water;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Water;

/// <summary>
/// Bodies, lines and water for the tests of this folder, made by hand, from a published row, or at random.
/// </summary>
internal static class Make
{
    /// <summary>Bodies of any weight and material from soft plastic to tungsten, bare or dressed.</summary>
    public static Gen<SinkingBody> AnyBody { get; } = Gen.Select(
        Log(0.2, 100), Log(1150, 19250), Gen.Double[0.25, 1], (grams, density, share) => Body(grams, density, share));

    /// <summary>Line of any material from floating braid to PVDF.</summary>
    public static Gen<LineInWater> AnyLine { get; } =
        Gen.Select(Gen.Double[0.06, 0.4], Gen.Double[970, 1780], (millimetres, density) => Line(millimetres, density));

    public static Gen<Temperature> AnyWater { get; } = Gen.Double[0, 30].Select(Water);

    public static SinkingBody Body(double grams, double density, double share = 1) =>
        new(Mass.FromGrams(grams), Density.FromKilogramsPerCubicMeter(density), share);

    public static SinkingBody Body(PublishedRow row) => row.Has("m_oz")
        ? new(Mass.FromOunces(row["m_oz"]), Density.FromKilogramsPerCubicMeter(row["rho_p"]))
        : Sphere(row.Has("d_mm") ? row["d_mm"] / 1e3 : row["d_um"] / 1e6, row["rho_p"]);

    public static LineInWater Line(double millimetres, double density) =>
        new(Length.FromMillimeters(millimetres), Density.FromKilogramsPerCubicMeter(density));

    public static Temperature Water(double celsius) => Temperature.FromDegreesCelsius(celsius);

    public static Temperature Water(PublishedRow row) => Water(row["T_C"]);

    /// <summary>Numbers spread evenly over their orders of magnitude.</summary>
    public static Gen<double> Log(double least, double most) =>
        Gen.Double[Math.Log(least), Math.Log(most)].Select(Math.Exp);

    private static SinkingBody Sphere(double metres, double density) =>
        Body(Math.PI / 6 * metres * metres * metres * density * 1e3, density);
}
