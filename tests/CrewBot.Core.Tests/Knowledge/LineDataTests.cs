using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class LineDataTests
{
    private static readonly RecordSet<LineMaterial> Lines = TradeKnowledge.BuiltIn.Lines;

    // Nylon: four public retail and angling charts; trade practice, no standard fixes a diameter to a test.
    [Theory]
    [InlineData(2, 0.005, 0.007)]
    [InlineData(4, 0.007, 0.008)]
    [InlineData(6, 0.009, 0.010)]
    [InlineData(8, 0.010, 0.011)]
    [InlineData(10, 0.011, 0.012)]
    [InlineData(12, 0.013, 0.014)]
    [InlineData(14, 0.014, 0.014)]
    [InlineData(17, 0.015, 0.016)]
    [InlineData(20, 0.016, 0.018)]
    [InlineData(25, 0.020, 0.020)]
    [InlineData(30, 0.020, 0.022)]
    [InlineData(40, 0.023, 0.024)]
    public void Sizes_OfNylon_LieWithinTheCharts(double pounds, double least, double most) =>
        Assert.InRange(Inches("nylon", pounds), least - 1e-6, most + 1e-6);

    // Braid: two public retail and angling charts.
    [Theory]
    [InlineData(6, 0.005, 0.005)]
    [InlineData(8, 0.006, 0.007)]
    [InlineData(10, 0.007, 0.008)]
    [InlineData(14, 0.009, 0.009)]
    [InlineData(20, 0.010, 0.011)]
    [InlineData(30, 0.012, 0.013)]
    [InlineData(40, 0.013, 0.013)]
    [InlineData(50, 0.014, 0.016)]
    public void Sizes_OfBraid_LieWithinTheCharts(double pounds, double least, double most) =>
        Assert.InRange(Inches("braid", pounds), least - 1e-6, most + 1e-6);

    // One public chart lists both at 0.005 in.
    [Fact]
    public void Sizes_OfSixPoundBraid_AreThoseOfTwoPoundNylon() =>
        Assert.Equal(Inches("nylon", 2), Inches("braid", 6), 1e-9);

    // Implied strength of drawn nylon, test over nominal area: 500 to 750 MPa, from the same charts.
    [Fact]
    public void Sizes_OfNylon_ImplyTheStrengthOfDrawnNylon() =>
        Assert.All(Lines["nylon"].Sizes, size => Assert.InRange(Megapascals(size), 500, 750));

    // Test goes as the square of diameter within a series; charts round to 0.001 in.
    [Theory]
    [InlineData("nylon", 1.5)]
    [InlineData("fluorocarbon", 1.5)]
    [InlineData("braid", 1.5)]
    [InlineData("steel", 1.1)]
    [InlineData("titanium", 1.1)]
    public void Sizes_WithinASeries_AreSmooth(string key, double spread)
    {
        var strengths = Lines[key].Sizes.Select(Megapascals).ToList();

        Assert.InRange(strengths.Max() / strengths.Min(), 1, spread);
    }

    // Polymer handbooks (nylon 1.13 to 1.15, from memory), resin bulletin (PVDF 1.78), review of UHMWPE fibre (0.97);
    // steel and titanium: plain handbook values, from memory.
    [Theory]
    [InlineData("nylon", 1130, 1150)]
    [InlineData("fluorocarbon", 1770, 1790)]
    [InlineData("braid", 970, 980)]
    [InlineData("steel", 7750, 8050)]
    [InlineData("titanium", 4430, 4540)]
    public void Density_OfEachMaterial_IsTheHandbooks(string key, double least, double most) =>
        Assert.InRange(Lines[key].Density.KilogramsPerCubicMeter, least - 1e-6, most + 1e-6);

    // Nylon: 1.5 to 3.5 GPa, lower end wet (fibre handbooks, from memory); PVDF: resin 2.1, oriented at best 4.0 (seen);
    // braid: 30 to 80 GPa on the solid area (from memory).
    [Theory]
    [InlineData("nylon", 1.5, 3.5)]
    [InlineData("fluorocarbon", 2.1, 4.0)]
    [InlineData("braid", 30, 80)]
    public void Modulus_OfDrawnLine_LiesWithinTheHandbooks(string key, double least, double most)
    {
        Assert.InRange(Lines[key].Modulus.Low.Gigapascals, least - 1e-6, most + 1e-6);
        Assert.InRange(Lines[key].Modulus.High.Gigapascals, least - 1e-6, most + 1e-6);
    }

    // Polyamide data pages: 7 % (nylon 66) to 10 % (nylon 6) at saturation; PVDF 0.01 to 0.05 % (ASTM D570, from memory).
    [Fact]
    public void WaterUptake_OfNylonAndFluorocarbon_IsTheDataPages()
    {
        Assert.Equal((7, 10), (Lines["nylon"].WaterUptakePercent.Low, Lines["nylon"].WaterUptakePercent.High));
        Assert.Equal((0.01, 0.05), (Lines["fluorocarbon"].WaterUptakePercent.Low, Lines["fluorocarbon"].WaterUptakePercent.High));
    }

    // Polymer handbooks, from memory: nylon 1.52 to 1.54, PVDF 1.41 to 1.43.
    [Fact]
    public void RefractiveIndex_OfClearLines_IsTheHandbooks()
    {
        Assert.InRange(Lines["nylon"].RefractiveIndex!.Value, 1.52, 1.54);
        Assert.InRange(Lines["fluorocarbon"].RefractiveIndex!.Value, 1.41, 1.43);
        Assert.Null(Lines["braid"].RefractiveIndex);
    }

    // D. Olander, reader knot challenge, 2010: five pulls of 30-lb braid parted between 44.5 and 54 lb.
    [Fact]
    public void OverLabel_OfBraid_CoversTheTensileTests()
    {
        Assert.InRange(44.5 / 30, Lines["braid"].OverLabel.Low, Lines["braid"].OverLabel.High);
        Assert.InRange(54.0 / 30, Lines["braid"].OverLabel.Low, Lines["braid"].OverLabel.High + 1e-9);
    }

    // Seven equal round strands in their circumscribed circle fill 7/9 of it (geometry).
    [Fact]
    public void SolidFraction_OfSevenStrandWire_IsSevenNinths() => Assert.Equal(7.0 / 9, Lines["steel"].SolidFraction, 0.005);

    private static double Inches(string key, double pounds) =>
        Assert.Single(Lines[key].Sizes, size => Math.Abs(size.Test.PoundsForce - pounds) < 1e-9).Diameter.Inches;

    private static double Megapascals(LineSize size) =>
        size.Test.Newtons / (Math.PI / 4 * Math.Pow(size.Diameter.Millimeters, 2));
}
