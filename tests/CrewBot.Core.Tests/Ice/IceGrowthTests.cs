using System.Globalization;
using CrewBot.Core.Ice;
using CrewBot.Core.Tests.Published;
using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Core.Tests.Ice;

public sealed class IceGrowthTests
{
    [Theory]
    [PublishedRows("stefan_cm")]
    public void Stefan_Metric_AgreesWithTable(PublishedRow row) =>
        row.Check(IceGrowth.Stefan(new StefanCoefficient(row["alpha"]), new DegreeDays(row["AFDD_C"])).Centimeters);

    [Theory]
    [PublishedRows("stefan_in")]
    public void Stefan_UsUnits_AgreesWithTable(PublishedRow row) => row.Check(IceGrowth.Stefan(
        StefanCoefficient.FromCustomary(row["alpha"]), DegreeDays.FromFahrenheit(row["AFDD_F"])).Inches);

    // The table prints both families to a digit: the metric one is held, the other agrees with it to rounding.
    [Theory]
    [PublishedRows("stefan_alpha")]
    public void Setting_Coefficient_IsThePublishedOne(PublishedRow row)
    {
        var setting = GrowthSetting.All.Single(setting => setting.Name == row.Inputs["case"]);
        var ends = row.Expected.Split('-').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray();
        var metric = row.Inputs["units"] == "metric";

        Assert.Equal(ends[0], metric ? setting.Least.Metric : setting.Least.Customary, metric ? 0 : 0.05);
        Assert.Equal(ends[^1], metric ? setting.Most.Metric : setting.Most.Customary, metric ? 0 : 0.05);
    }

    [Theory]
    [PublishedRows("alpha_US_to_metric")]
    public void Coefficient_FromUsUnits_AgreesWithTable(PublishedRow row) =>
        row.Check(StefanCoefficient.FromCustomary(row["alpha_in"]).Metric);

    [Theory]
    [PublishedRows("stefan_alpha_physical_max")]
    public void Ceiling_FromConstants_AgreesWithTable(PublishedRow row) => row.Check(IceGrowth.Ceiling.Metric);

    [Theory]
    [PublishedRows("ashton_cm")]
    public void Ashton_InTable_AgreesWithTable(PublishedRow row) => row.Check(IceGrowth.Ashton(
        Length.FromMeters(row["h0_m"]),
        TemperatureDelta.FromDegreesCelsius(row["dT_C"]),
        Duration.FromDays(row["days"]),
        HeatTransferCoefficient.FromWattsPerSquareMeterCelsius(row["Hia"]),
        Length.FromMeters(row["hs_m"]),
        ThermalConductivity.FromWattsPerMeterKelvin(row.Inputs["ks"] == "-" ? 0.25 : row["ks"])).Centimeters);

    [Theory]
    [PublishedRows("daily_FDD_C")]
    public void Day_Celsius_AgreesWithTable(PublishedRow row) => row.Check(FreezingDegreeDays.Of(new(
        Temperature.FromDegreesCelsius(row["Tmax"]), Temperature.FromDegreesCelsius(row["Tmin"]))).Celsius);

    [Theory]
    [PublishedRows("daily_FDD_F")]
    public void Day_Fahrenheit_AgreesWithTable(PublishedRow row) => row.Check(FreezingDegreeDays.Of(new(
        Temperature.FromDegreesFahrenheit(row["Tmax"]), Temperature.FromDegreesFahrenheit(row["Tmin"]))).Fahrenheit);

    [Theory]
    [PublishedRows("AFDD_running")]
    public void Accumulate_Days_NeverFallsBelowZero(PublishedRow row)
    {
        var days = Numbers(row.Inputs["mean_C"]).Select(mean => Temperature.FromDegreesCelsius(mean)).Select(mean => new DayTemperatures(mean, mean));

        Assert.Equal(Numbers(row.Expected), FreezingDegreeDays.Accumulate(days).Select(sum => Math.Round(sum.Celsius, 9)));
    }

    [Fact]
    public void Stefan_AboveTheCeiling_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "coefficient", () => IceGrowth.Stefan(new StefanCoefficient(3.6), new DegreeDays(10)));

    [Fact]
    public void Day_MinimumAboveMaximum_Throws() => Assert.Throws<ArgumentOutOfRangeException>("day", () => FreezingDegreeDays.Of(
        new(Temperature.FromDegreesCelsius(-5), Temperature.FromDegreesCelsius(-4))));

    private static IEnumerable<double> Numbers(string text) => text.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture));
}
