using CrewBot.Core.Lines;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Lines;

public sealed class LineWearTests
{
    [Theory]
    [PublishedRows("twist_turns_fixed_spool")]
    public void TurnsOffFixedSpool_SpoolInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(LineTwist.TurnsOffFixedSpool(
            Length.FromMeters(row["L_m"]), Length.FromMillimeters(row["coil_diameter_mm"])));

    [Theory]
    [PublishedRows("wire_heat_transfer_coefficient")]
    public void CoefficientInWind_LineInTable_AgreesWithTable(PublishedRow row)
    {
        var air = new AirFilm(
            KinematicViscosity.FromSquareMetersPerSecond(row["nu_air"]),
            ThermalConductivity.FromWattsPerMeterKelvin(row["k_air"]),
            row["Pr"]);

        var coefficient = LineIcing.CoefficientInWind(
            Length.FromMillimeters(row["d_mm"]), Speed.FromMetersPerSecond(row["U_air"]), air);

        row.Check(coefficient.WattsPerSquareMeterKelvin);
        Assert.Equal(AirFilm.NearMinusTen, air);
    }

    [Theory]
    [PublishedRows("film_freeze_time")]
    public void FreezeTime_FilmInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(LineIcing.FreezeTime(
            Length.FromMicrometers(row["film_um"]),
            HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(row["h"]),
            TemperatureDelta.FromKelvins(row["dT"])).Seconds);

    // Arithmetic: 100 m at 0.20 a metre for four seasons against 0.06 a metre for one.
    [Fact]
    public void PerSeason_BraidAgainstNylon_DividesPriceByLife()
    {
        var used = Length.FromMeters(100);

        Assert.Equal(5.0m, SeasonCost.PerSeason(0.20m, used, 4));
        Assert.Equal(6.0m, SeasonCost.PerSeason(0.06m, used, 1));
        Assert.Equal(12.0m, SeasonCost.PerSeason(0.06m, used, 0.5m));
    }

    [Fact]
    public void Calculations_OutsideTheirRange_Throw()
    {
        var (line, metre) = (Length.FromMillimeters(0.2), Length.FromMeters(1));
        var coefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(50);

        Assert.Throws<ArgumentOutOfRangeException>("drawnOff", () => LineTwist.TurnsOffFixedSpool(-metre, metre));
        Assert.Throws<ArgumentOutOfRangeException>("coil", () => LineTwist.TurnsOffFixedSpool(metre, Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(
            "wind", () => LineIcing.CoefficientInWind(line, Speed.FromMetersPerSecond(0.01), AirFilm.NearMinusTen));
        Assert.Throws<ArgumentOutOfRangeException>(
            "belowFreezing", () => LineIcing.FreezeTime(line, coefficient, TemperatureDelta.FromKelvins(0)));
        Assert.Throws<ArgumentOutOfRangeException>("pricePerMetre", () => SeasonCost.PerSeason(-1, metre, 1));
        Assert.Throws<ArgumentOutOfRangeException>("seasons", () => SeasonCost.PerSeason(1, metre, 0));
        Assert.Throws<ArgumentOutOfRangeException>("used", () => SeasonCost.PerSeason(1, Length.Zero, 1));
    }
}
