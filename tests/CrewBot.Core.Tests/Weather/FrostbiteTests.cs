using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Weather;

public sealed class FrostbiteTests
{
    [Theory]
    [PublishedRows("frostbite_band")]
    public void Band_OfIndex_IsTheTables(PublishedRow row) =>
        Assert.Equal(row.Expected, Text(FrostbiteBand.Of((int)row["WCI"])));

    [Theory]
    [PublishedRows("frostbite_minutes")]
    public void Computed_WhereItHolds_AgreesWithTable(PublishedRow row) => row.Check(
        Frostbite.Of(Temperature.FromDegreesCelsius(row["T_C"]), Speed.FromKilometersPerHour(row["V_kmh"])).Computed!.Value.Minutes);

    // The chart of the other agency is never milder than what is shown.
    [Theory]
    [PublishedRows("frostbite_chart_US")]
    public void Soonest_AgainstTheUsChart_IsNeverLater(PublishedRow row)
    {
        var frostbite = Frostbite.Of(Temperature.FromDegreesFahrenheit(row["T_F"]), Speed.FromMilesPerHour(row["V_mph"]));

        Assert.True(frostbite.Soonest!.Value.Minutes <= row.Value);
    }

    [Fact]
    public void Of_BandSaysLonger_NamesTheFormula() // -25 °C and 30 km/h: 9.99 min beside a band of 10 to 30, by the reference
    {
        var frostbite = Frostbite.Of(Temperature.FromDegreesCelsius(-25), Speed.FromKilometersPerHour(30));

        Assert.True(frostbite.FormulaIsSooner);
        Assert.Equal(9.99, frostbite.Soonest!.Value.Minutes, 0.01);
    }

    [Fact]
    public void Of_FormulaSaysLonger_NamesTheBand() // -35 °C and 50 km/h: 4.0 min beside a band of under 2, by the reference
    {
        var frostbite = Frostbite.Of(Temperature.FromDegreesCelsius(-35), Speed.FromKilometersPerHour(50));

        Assert.False(frostbite.FormulaIsSooner);
        Assert.Equal(Duration.Zero, frostbite.Soonest);
        Assert.Equal(4.0, frostbite.Computed!.Value.Minutes, 0.05);
    }

    [Fact]
    public void Soonest_AnyWeather_IsNeverLaterThanEither() =>
        Gen.Select(Gen.Double[-60, 5], Gen.Double[0, 120]).Sample((celsius, kmh) =>
        {
            var frostbite = Frostbite.Of(Temperature.FromDegreesCelsius(celsius), Speed.FromKilometersPerHour(kmh));

            return (frostbite.Band.Soonest is not { } band || frostbite.Soonest <= band)
                && (frostbite.Computed is not { } computed || frostbite.Soonest <= computed);
        });

    private static string Text(FrostbiteBand band) => band switch
    {
        { Soonest: null } => "low",
        { Soonest.Minutes: 0 } => $"under {band.Latest!.Value.Minutes:0} min",
        _ => $"{band.Soonest!.Value.Minutes:0} to {band.Latest!.Value.Minutes:0} min",
    };
}
