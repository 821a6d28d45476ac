using CrewBot.Core.Tests.Published;
using CrewBot.Core.Water;
using UnitsNet;

namespace CrewBot.Core.Tests.Water;

public sealed class FreshWaterTests
{
    [Theory]
    [PublishedRows("density_tanaka")]
    public void DensityAt_TemperatureInTable_AgreesWithTanaka(PublishedRow row) => row.Check(DensityAt(row["T_C"]));

    // Kell's formula is another fit to other measurements: the two stay within 0.004 kg/m³, so 0.005 is the width of
    // two honest sources and far below any wrong coefficient.
    [Theory]
    [PublishedRows("density_kell")]
    public void DensityAt_TemperatureInTable_AgreesWithKell(PublishedRow row) =>
        row.Check(DensityAt(row["T_C"]), 0.005);

    // Handbook of Chemistry and Physics, 53rd ed., p. F-4, g/mL × 1000 (from a public transcription of the page). Older
    // temperature scale, hence the same 0.005.
    [Theory]
    [InlineData(0, 999.841)]
    [InlineData(2, 999.941)]
    [InlineData(4, 999.973)]
    [InlineData(10, 999.700)]
    [InlineData(15, 999.099)]
    public void DensityAt_TemperatureInHandbook_AgreesWithHandbook(double celsius, double kgPerCubicMetre) =>
        Assert.Equal(kgPerCubicMetre, DensityAt(celsius), 0.005);

    [Theory]
    [PublishedRows("temperature_of_maximum_density_tanaka")]
    public void DensityAt_AroundTheMaximum_RisesToItAndFallsAfterIt(PublishedRow row)
    {
        double Rise(int tenths) => DensityAt(tenths / 10.0) - DensityAt((tenths - 1) / 10.0);

        Assert.All(Enumerable.Range(1, 39), tenths => Assert.True(Rise(tenths) > 0));
        Assert.All(Enumerable.Range(41, 259), tenths => Assert.True(Rise(tenths) < 0));

        Assert.True(DensityAt(row.Value) > DensityAt(row.Value - 0.05));
        Assert.True(DensityAt(row.Value) > DensityAt(row.Value + 0.05));
    }

    [Theory]
    [PublishedRows("maximum_density_tanaka")]
    public void DensityAt_Maximum_AgreesWithTanaka(PublishedRow row) => row.Check(DensityAt(3.983035));

    [Theory]
    [PublishedRows("density_difference")]
    public void DensityAt_UnderIceAndAtTheBottom_DiffersAsPublished(PublishedRow row) =>
        row.Check(DensityAt(row["T1_C"]) - DensityAt(row["T2_C"]));

    // The handbook's own figures stand in the file from memory and are rounded to four digits.
    [Theory]
    [PublishedRows("dynamic_viscosity", "dynamic_viscosity_handbook")]
    public void ViscosityAt_TemperatureInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(ViscosityAt(row["T_C"]) * 1e3);

    [Theory]
    [PublishedRows("kinematic_viscosity")]
    public void ViscosityAt_OverDensity_AgreesWithTable(PublishedRow row) =>
        row.Check(ViscosityAt(row["T_C"]) / DensityAt(row["T_C"]) * 1e6);

    [Theory]
    [PublishedRows("dynamic_viscosity_r12")]
    public void FullFormulation_AtItsOwnCheckPoint_GivesThePublishedValue(PublishedRow row) =>
        row.Check(IapwsViscosity.PascalSecondsAt(row["T_K"], row["rho"]) * 1e3);

    // The short equation was fitted to the full formulation and stays within 0.0031 % of it over 0–30 °C; viscosity
    // itself is known to 1 %.
    [Fact]
    public void ViscosityAt_WholeRange_AgreesWithTheFullFormulation() =>
        Assert.All(Enumerable.Range(0, 31), celsius =>
        {
            var full = IapwsViscosity.PascalSecondsAt(celsius + 273.15, DensityAt(celsius));
            Assert.Equal(1, ViscosityAt(celsius) / full, 5e-5);
        });

    [Theory]
    [InlineData(-0.001)]
    [InlineData(30.001)]
    public void Properties_OutsideTheRange_Throw(double celsius)
    {
        var outside = Temperature.FromDegreesCelsius(celsius);

        Assert.Throws<ArgumentOutOfRangeException>("water", () => FreshWater.DensityAt(outside));
        Assert.Throws<ArgumentOutOfRangeException>("water", () => FreshWater.ViscosityAt(outside));
    }

    [Theory]
    [InlineData(32)]
    [InlineData(86)]
    public void Properties_FahrenheitAtTheRangesEnds_AreComputed(double fahrenheit) =>
        Assert.InRange(
            FreshWater.DensityAt(Temperature.FromDegreesFahrenheit(fahrenheit)).KilogramsPerCubicMeter, 995, 1000);

    private static double DensityAt(double celsius) =>
        FreshWater.DensityAt(Temperature.FromDegreesCelsius(celsius)).KilogramsPerCubicMeter;

    private static double ViscosityAt(double celsius) =>
        FreshWater.ViscosityAt(Temperature.FromDegreesCelsius(celsius)).PascalSeconds;
}
