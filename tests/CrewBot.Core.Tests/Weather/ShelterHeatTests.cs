using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Tests.Weather;

public sealed class ShelterHeatTests
{
    private static readonly Power ThreeKilowatts = Power.FromKilowatts(3);

    [Theory]
    [PublishedRows("U_US_to_SI")]
    public void Fabric_InUsUnits_IsTheGreenhouseTables(PublishedRow row)
    {
        row.Check(HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(row["U_btu"]).WattsPerSquareMeterCelsius);
        Assert.Contains(
            new[] { ShelterHeat.SingleFabric, ShelterHeat.DoubleFabric }, fabric => Math.Abs(fabric.WattsPerSquareMeterCelsius - row.Value) < 0.1);
    }

    [Theory]
    [PublishedRows("fabric_loss_W")]
    public void ThroughFabric_Metric_AgreesWithTable(PublishedRow row)
    {
        var loss = ShelterHeat.ThroughFabric(
            HeatTransferCoefficient.FromWattsPerSquareMeterCelsius(row["U"]), Area.FromSquareMeters(row["A_m2"]), Warmer(row));
        var expected = row.Expected.Split(" | ");

        Assert.Equal(Parse(expected[0]), (double)loss.Watts, Parse(expected[0]) * 0.001);
        Assert.Equal(Parse(expected[1]), (double)loss.BritishThermalUnitsPerHour, Parse(expected[1]) * 0.001);
    }

    [Theory]
    [PublishedRows("fabric_loss_BTU")]
    public void ThroughFabric_UsUnits_AgreesWithTable(PublishedRow row) => row.Check((double)ShelterHeat.ThroughFabric(
        HeatTransferCoefficient.FromBtusPerHourSquareFootDegreeFahrenheit(row["U"]),
        Area.FromSquareFeet(row["A_ft2"]),
        TemperatureDelta.FromDegreesFahrenheit(row["dT_F"])).BritishThermalUnitsPerHour);

    [Theory]
    [PublishedRows("air_change_loss_W")]
    public void WithAir_InTable_AgreesWithTable(PublishedRow row) => row.Check((double)ShelterHeat.WithAir(
        Frequency.FromCyclesPerHour(row["ACH"]), Volume.FromCubicMeters(row["V_m3"]), Warmer(row)).Watts);

    [Theory]
    [PublishedRows("propane_lb_per_h")]
    public void RateFor_UsUnits_AgreesWithTable(PublishedRow row) =>
        row.Check(Propane.RateFor(Power.FromBritishThermalUnitsPerHour(row["input_btu_h"])).PoundsPerHour);

    [Theory]
    [PublishedRows("propane_kg_per_h")]
    public void RateFor_Metric_AgreesWithTable(PublishedRow row) =>
        row.Check(Propane.RateFor(Power.FromWatts(row["input_W"])).KilogramsPerHour);

    [Theory]
    [PublishedRows("propane_run_hours")]
    public void RunTime_Bottle_AgreesWithTable(PublishedRow row) => row.Check(Propane.RunTime(
        Mass.FromPounds(row["propane_lb"]), Power.FromBritishThermalUnitsPerHour(row["input_btu_h"])).Hours);

    [Theory]
    [PublishedRows("propane_heating_value")]
    public void HeatingValue_InMetricUnits_AgreesWithTable(PublishedRow row) => row.Check(Propane.HeatingValue.MegajoulesPerKilogram);

    [Theory]
    [PublishedRows("O2_kg_per_kg_propane")]
    public void Oxygen_PerMass_AgreesWithTable(PublishedRow row) => row.Check(Propane.Oxygen.DecimalFractions);

    [Theory]
    [PublishedRows("CO2_kg_per_kg_propane")]
    public void CarbonDioxide_PerMass_AgreesWithTable(PublishedRow row) => row.Check(Propane.CarbonDioxide.DecimalFractions);

    [Theory]
    [PublishedRows("H2O_kg_per_kg_propane")]
    public void Water_PerMass_AgreesWithTable(PublishedRow row) => row.Check(Propane.Water.DecimalFractions);

    [Theory]
    [PublishedRows("sealed_minutes_to_low_O2")]
    public void SealedUntil_LowOxygen_AgreesWithTable(PublishedRow row) => row.Check(Propane.SealedUntil(
        Power.FromWatts(row["input_W"]),
        Volume.FromCubicMeters(row["V_m3"]),
        Ratio.FromDecimalFractions(row["O2_from"]),
        Ratio.FromDecimalFractions(row["O2_to"])).Minutes);

    [Theory]
    [PublishedRows("fresh_air_for_CO2_5000ppm")]
    public void FreshAirFor_CarbonDioxide_AgreesWithTable(PublishedRow row) => row.Check(Propane.FreshAirFor(
        Power.FromWatts(row["input_W"]), Ratio.FromPartsPerMillion(5000), Ratio.FromPartsPerMillion(row["outdoor_ppm"])).CubicMetersPerHour);

    [Theory]
    [PublishedRows("CO_alarm_window")]
    public void Alarm_AtConcentration_HasTheStandardsWindow(PublishedRow row)
    {
        var alarm = new[] { CarbonMonoxideAlarm.Low, CarbonMonoxideAlarm.High }
            .Single(alarm => Math.Abs(alarm.Concentration.PartsPerMillion - row["CO_ppm"]) < 1e-6);

        Assert.Equal(row.Expected, FormattableString.Invariant($"{alarm.Soonest.Minutes:0}-{alarm.Latest.Minutes:0}"));
    }

    [Fact]
    public void Losses_OutsideTheirRange_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "walls", () => ShelterHeat.ThroughFabric(ShelterHeat.SingleFabric, Area.Zero, TemperatureDelta.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("bottle", () => Propane.RunTime(Mass.Zero, ThreeKilowatts));
        Assert.Throws<ArgumentOutOfRangeException>("heat", () => Propane.RateFor(Power.Zero));
    }

    private static TemperatureDelta Warmer(PublishedRow row) => TemperatureDelta.FromDegreesCelsius(row["dT_C"]);

    private static double Parse(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
