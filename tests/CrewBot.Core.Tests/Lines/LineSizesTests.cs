using CrewBot.Core.Lines;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Lines;

public sealed class LineSizesTests
{
    // Middle of the spread of the public charts, by row of the table; 25 lb nylon is left out because its one chart
    // gives it the diameter that others give 30 lb.
    private static readonly LineSizes Nylon = Charted("nylon_monofilament_diameter", except: 25);
    private static readonly LineSizes Braid = Charted("braid_diameter", except: null);

    [Theory]
    [PublishedRows("nylon_monofilament_diameter")]
    public void DiameterAt_NylonTest_LiesWithinTheCharts(PublishedRow row) =>
        // The left-out 25 lb is interpolated: 0.019 in against one chart's 0.020, and labels round to a thousandth.
        AssertWithin(row, Nylon.DiameterAt(Pounds(row["test_lb"])).Inches, slack: row["test_lb"] == 25 ? 0.001 : 0);

    [Theory]
    [PublishedRows("braid_diameter")]
    public void DiameterAt_BraidTest_LiesWithinTheCharts(PublishedRow row) =>
        AssertWithin(row, Braid.DiameterAt(Pounds(row["test_lb"])).Inches, slack: 0);

    // "6-lb braid is about as thick as 2-lb monofilament": one chart lists both at 0.005 in.
    [Theory]
    [PublishedRows("braid_test_with_diameter_of_2lb_nylon")]
    public void SameThicknessIn_TwoPoundNylonOfThatChart_IsSixPoundBraid(PublishedRow row)
    {
        var nylonOfThatChart = new LineSizes([Inches(2, 0.005), Inches(4, 0.007)]);

        row.Check(nylonOfThatChart.SameThicknessIn(Braid, Pounds(2))!.Value.PoundsForce);
    }

    [Theory]
    [PublishedRows("braid_test_with_diameter_of_8lb_nylon")]
    public void SameThicknessIn_EightPoundNylon_IsTheBraidThatChartsPairItWith(PublishedRow row) =>
        row.Check(Nylon.SameThicknessIn(Braid, Pounds(8))!.Value.PoundsForce);

    [Fact]
    public void SameThicknessIn_OtherTableHasNoLineSoThick_IsNone() =>
        Assert.Null(Nylon.SameThicknessIn(Braid, Pounds(40)));

    [Fact]
    public void TestAt_DiameterOfAnyTest_GivesTheTestBack() =>
        Gen.Double[2, 40].Sample(test =>
            Assert.Equal(test, Nylon.TestAt(Nylon.DiameterAt(Pounds(test))).PoundsForce, 1e-9)); // rounding only

    [Fact]
    public void DiameterAt_StrongerLine_IsThicker() =>
        Gen.Select(Gen.Double[2, 40], Gen.Double[2, 40])
            .Where((one, other) => one < other)
            .Sample((one, other) => Nylon.DiameterAt(Pounds(one)).Meters < Nylon.DiameterAt(Pounds(other)).Meters);

    // Constant strength per area: half-way between 10 lb at 3 units and 20 lb at 5, the square is half-way: √17.
    [Fact]
    public void DiameterAt_BetweenRows_IsLinearInTheSquare() =>
        Assert.Equal(
            Math.Sqrt(17),
            new LineSizes([Inches(10, 3), Inches(20, 5)]).DiameterAt(Pounds(15)).Inches,
            1e-9);

    [Theory]
    [InlineData(1.99, false)]
    [InlineData(2, true)]
    [InlineData(40, true)]
    [InlineData(40.01, false)]
    [InlineData(-2, false)]
    public void Covers_Test_TellsWhetherDiameterAtAnswers(double test, bool covered)
    {
        Assert.Equal(covered, Nylon.Covers(Pounds(test)));
        if (covered)
        {
            Assert.True(Nylon.DiameterAt(Pounds(test)).Meters > 0);
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(test), () => Nylon.DiameterAt(Pounds(test)));
        }
    }

    // 2 lb given as kilograms-force and back is not the same double; the table's own end must still be covered.
    [Fact]
    public void DiameterAt_TablesEndInAnotherUnit_IsTheEndsDiameter() =>
        Assert.Equal(0.006, Nylon.DiameterAt(Force.FromKilogramsForce(Pounds(2).KilogramsForce)).Inches, 1e-9);

    [Theory]
    [InlineData(0.0059, false)]
    [InlineData(0.006, true)]
    [InlineData(0.0236, false)]
    [InlineData(-0.01, false)]
    public void Covers_Diameter_TellsWhetherTestAtAnswers(double diameter, bool covered)
    {
        var length = Length.FromInches(diameter);

        Assert.Equal(covered, Nylon.Covers(length));
        if (!covered)
        {
            Assert.Throws<ArgumentOutOfRangeException>(nameof(diameter), () => Nylon.TestAt(length));
        }
    }

    [Fact]
    public void LineSizes_TableWithAFault_IsRefused()
    {
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([]));
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([Inches(2, 0.006)]));
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([Inches(0, 0.006), Inches(4, 0.007)]));
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([Inches(2, 0), Inches(4, 0.007)]));
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([Inches(4, 0.006), Inches(4, 0.007)]));
        Assert.Throws<ArgumentException>("sizes", () => new LineSizes([Inches(25, 0.020), Inches(30, 0.020)]));
    }

    private static LineSizes Charted(string quantity, double? except) => new(PublishedTable.Rows
        .Where(row => row.Quantity == quantity && row["test_lb"] != except)
        .Select(row => Inches(row["test_lb"], row.Ends.Average())));

    private static void AssertWithin(PublishedRow row, double inches, double slack) =>
        Assert.InRange(inches, row.Ends[0] - slack - 1e-9, row.Ends[1] + slack + 1e-9);

    private static LineSize Inches(double test, double diameter) => new(Pounds(test), Length.FromInches(diameter));

    private static Force Pounds(double pounds) => Force.FromPoundsForce(pounds);
}
