using CrewBot.Core.Fish;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class BarotraumaExpansionTests
{
    // Boyle's law at sea level, worked out separately to four decimals.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(3, 1.2904)]
    [InlineData(6, 1.5807)]
    [InlineData(9, 1.8711)]
    [InlineData(10, 1.9678)]
    [InlineData(12, 2.1614)]
    public void FactorFrom_DepthInMetres_AgreesWithBoyle(double metres, double factor) =>
        Assert.Equal(factor, AtSeaLevel(Length.FromMeters(metres)), 0.0001);

    [Theory]
    [InlineData(25, 1.7375)]
    [InlineData(30, 1.8850)]
    [InlineData(33, 1.9735)]
    public void FactorFrom_DepthInFeet_AgreesWithBoyle(double feet, double factor) =>
        Assert.Equal(factor, AtSeaLevel(Length.FromFeet(feet)), 0.0001);

    [Fact]
    public void FactorFrom_HighLake_IsGreaterThanAtSeaLevel()
    {
        var depth = Length.FromMeters(10);

        Assert.True(BarotraumaExpansion.FactorFrom(depth, Pressure.FromKilopascals(75)) > AtSeaLevel(depth));
    }

    [Theory]
    [InlineData(-1, 101, "depth")]
    [InlineData(201, 101, "depth")]
    [InlineData(10, 49, "surface")]
    [InlineData(10, 111, "surface")]
    public void FactorFrom_OutsideTheRange_Throws(double metres, double kilopascals, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () =>
            BarotraumaExpansion.FactorFrom(Length.FromMeters(metres), Pressure.FromKilopascals(kilopascals)));

    private static double AtSeaLevel(Length depth) =>
        BarotraumaExpansion.FactorFrom(depth, BarotraumaExpansion.SeaLevel);
}
