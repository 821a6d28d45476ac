using UnitsNet;

namespace CrewBot.Core.Weather;

/// <summary>What burning propane gives, takes and leaves behind.</summary>
/// <remarks>
/// Heating value after vaporisation from a supplier's data sheet: 21 548 BTU/lb. Stoichiometry C3H8 + 5 O2 → 3 CO2 + 4 H2O
/// with molar masses 44.096, 31.998, 44.009 and 18.015 g/mol. Cold bottles give less gas.
/// </remarks>
public static class Propane
{
    private const double PropaneMolarMass = 44.096;
    private const double OxygenMolarMass = 31.998;

    // An ideal gas at 0 °C and one atmosphere, m³/kmol.
    private const double MolarVolume = 22.414;
    private const double CarbonDioxideMolarMass = 44.009;

    /// <summary>Heat of one mass.</summary>
    public static SpecificEnergy HeatingValue { get; } = SpecificEnergy.FromBtuPerPound(21_548);

    /// <summary>Oxygen used for each mass burned.</summary>
    public static Ratio Oxygen { get; } = Ratio.FromDecimalFractions(5 * OxygenMolarMass / PropaneMolarMass);

    /// <summary>Carbon dioxide made from each mass burned.</summary>
    public static Ratio CarbonDioxide { get; } = Ratio.FromDecimalFractions(3 * CarbonDioxideMolarMass / PropaneMolarMass);

    /// <summary>Water made from each mass burned.</summary>
    public static Ratio Water { get; } = Ratio.FromDecimalFractions(4 * 18.015 / PropaneMolarMass);

    /// <summary>How fast a burner takes propane.</summary>
    /// <param name="heat">What it is rated at, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="heat"/> is not above 0.</exception>
    public static MassFlow RateFor(Power heat) => MassFlow.FromKilogramsPerSecond(KilogramsPerSecond(heat));

    /// <summary>How long a bottle lasts.</summary>
    /// <param name="bottle">Propane in it, above 0.</param>
    /// <param name="heat">What the burner is rated at, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0.</exception>
    public static Duration RunTime(Mass bottle, Power heat) => Duration.FromSeconds(
        ValidRange.Positive(bottle.Kilograms, "kg", nameof(bottle)) / KilogramsPerSecond(heat));

    /// <summary>
    /// How long a burner takes to use up the oxygen of a room without a leak. People in it, who breathe, make it shorter, and
    /// carbon monoxide can come much earlier: a warning figure, never a time to rely on.
    /// </summary>
    /// <param name="heat">What the burner is rated at, above 0.</param>
    /// <param name="room">Volume of air, above 0.</param>
    /// <param name="from">Share of oxygen at first, up to 21 %.</param>
    /// <param name="to">Share of oxygen at last, from 0, below <paramref name="from"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Duration SealedUntil(Power heat, Volume room, Ratio from, Ratio to)
    {
        var first = ValidRange.Closed(from.DecimalFractions, 0, 0.21, "", nameof(from));
        var used = ValidRange.Positive(first - ValidRange.NotNegative(to.DecimalFractions, "", nameof(to)), "", nameof(to));
        var oxygen = ValidRange.Positive(room.CubicMeters, "m³", nameof(room)) * used / MolarVolume * OxygenMolarMass;
        return Duration.FromSeconds(oxygen / (KilogramsPerSecond(heat) * Oxygen.DecimalFractions));
    }

    /// <summary>
    /// Fresh air that keeps a burner's carbon dioxide below a limit, people not counted. It does not protect against carbon
    /// monoxide.
    /// </summary>
    /// <param name="heat">What the burner is rated at, above 0.</param>
    /// <param name="limit">Carbon dioxide to stay below.</param>
    /// <param name="outdoors">Carbon dioxide outdoors, below the limit.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static VolumeFlow FreshAirFor(Power heat, Ratio limit, Ratio outdoors)
    {
        var room = ValidRange.Positive(limit.DecimalFractions - outdoors.DecimalFractions, "", nameof(limit));
        var made = KilogramsPerSecond(heat) * CarbonDioxide.DecimalFractions / CarbonDioxideMolarMass * MolarVolume;
        return VolumeFlow.FromCubicMetersPerSecond(made / room);
    }

    private static double KilogramsPerSecond(Power heat) =>
        ValidRange.Positive((double)heat.Watts, "W", nameof(heat)) / HeatingValue.JoulesPerKilogram;
}
