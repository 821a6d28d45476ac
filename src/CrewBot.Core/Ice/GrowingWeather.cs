using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>
/// What a run of days has done for ice. Everything here is frost, or one growth beside another: no thickness comes out of it, for
/// weather gives none (<see cref="IceGrowth"/>).
/// </summary>
/// <param name="Kind">What kind of weather it is for ice.</param>
/// <param name="Frost">The running sum of freezing degree-days after the last day.</param>
/// <param name="Lately">What the last <see cref="LateDays"/> days brought; negative when they took some away.</param>
/// <param name="ShareLately">Which share of all growth so far the last days made; null when they made none, or there were no days before.</param>
public sealed record GrowingWeather(IceWeather Kind, DegreeDays Frost, DegreeDays Lately, Ratio? ShareLately)
{
    /// <summary>What counts as lately.</summary>
    public const int LateDays = 3;

    /// <summary>The longest run: a winter.</summary>
    public const int MostDays = 300;

    private static readonly HeatTransferCoefficient TypicalSurface = HeatTransferCoefficient.FromWattsPerSquareMeterCelsius(20);
    private static readonly ThermalConductivity NewSnow = ThermalConductivity.FromWattsPerMeterKelvin(0.1);
    private static readonly ThermalConductivity PackedSnow = ThermalConductivity.FromWattsPerMeterKelvin(0.4);

    private int Days { get; init; }

    /// <summary>
    /// What Ashton's form gives of the most that Stefan's can give in the same frost: how far the simple form flatters ice that
    /// began with these days. Null without frost.
    /// </summary>
    public Ratio? FullerForm => Frost.Celsius > 0
        ? Ratio.FromDecimalFractions(Grown(Length.Zero, PackedSnow) / IceGrowth.Stefan(IceGrowth.Ceiling, Frost))
        : null;

    /// <summary>Sums the days up.</summary>
    /// <param name="days">Earliest first, none left out; 1 to <see cref="MostDays"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many, or a day's temperatures are out of range.</exception>
    public static GrowingWeather Of(IReadOnlyList<DayTemperatures> days)
    {
        ValidRange.Closed(days.Count, 1, MostDays, "days", nameof(days));
        var sums = FreezingDegreeDays.Accumulate(days);
        var lately = new DegreeDays(days.TakeLast(LateDays).Sum(day => FreezingDegreeDays.Of(day).Celsius));
        return new(KindOf(days[^1], sums[^1], lately), sums[^1], lately, ShareOf(sums)) { Days = days.Count };
    }

    /// <summary>
    /// What snow leaves of the growth on bare ice, by Ashton's form, for ice that began with these days: under new snow, and under
    /// snow that is packed. Null without frost.
    /// </summary>
    /// <param name="snow">From 0 to 3 m.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="snow"/> lies outside its range.</exception>
    public (Ratio New, Ratio Packed)? Under(Length snow)
    {
        if (Frost.Celsius <= 0)
        {
            return null;
        }

        var bare = Grown(Length.Zero, PackedSnow);
        return (Ratio.FromDecimalFractions(Grown(snow, NewSnow) / bare), Ratio.FromDecimalFractions(Grown(snow, PackedSnow) / bare));
    }

    private static IceWeather KindOf(DayTemperatures last, DegreeDays frost, DegreeDays lately) =>
        frost.Celsius <= 0 ? IceWeather.None
        : lately.Celsius < 0 ? IceWeather.Thawing
        : last.Most.DegreesCelsius >= 0 ? IceWeather.ThawingByDay
        : IceWeather.Freezing;

    // By Stefan's root, in which the coefficient of the water cancels: 1 - √(before/now), written so that hardly any is not none.
    private static Ratio? ShareOf(IReadOnlyList<DegreeDays> sums) =>
        sums.Count > LateDays && sums[^(LateDays + 1)].Celsius is var before && sums[^1].Celsius is var now && before < now
            ? Ratio.FromDecimalFractions((now - before) / now / (1 + Math.Sqrt(before / now)))
            : null;

    private Length Grown(Length snow, ThermalConductivity conductivity) => IceGrowth.Ashton(
        Length.Zero, TemperatureDelta.FromDegreesCelsius(Frost.Celsius / Days), Duration.FromDays(Days), TypicalSurface, snow, conductivity);
}
