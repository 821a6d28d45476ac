using CrewBot.Core.Fish;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class HoleFitTests
{
    [Theory]
    [PublishedRows("girth_from_length_weight")]
    public void FromLengthAndWeight_FishInTable_AgreesWithTable(PublishedRow row) => row.Check(Girth(row).Inches);

    [Theory]
    [PublishedRows("round_equivalent_diameter")]
    public void Of_FishInTable_TakesUpItsRoundDiameter(PublishedRow row)
    {
        var fit = HoleFit.Of(Length.FromInches(10), Girth(row), Length.Zero, Length.Zero);

        row.Check(10 - fit.Margin.Inches);
    }

    [Theory]
    [PublishedRows("girth_limit_round_fish")]
    public void Of_FishOfTheLimitingGirth_JustPasses(PublishedRow row)
    {
        var hole = Length.FromInches(row["hole_inch"]);
        HoleFit Fit(double inches) => HoleFit.Of(hole, Length.FromInches(inches), Length.Zero, Length.Zero);

        Assert.True(Fit(row.Value * 0.999).Passes); // the row is rounded to a thousandth
        Assert.False(Fit(row.Value * 1.001).Passes);
    }

    [Theory]
    [PublishedRows("round_fish_fits")]
    public void Passes_RoundFishInTable_AgreesWithTable(PublishedRow row)
    {
        var fit = HoleFit.Of(
            Length.FromInches(row["hole_inch"]), Length.FromInches(row["girth_inch"]), Length.Zero, Length.Zero);

        Assert.Equal(row.Expected == "yes", fit.Passes);
    }

    // Widest of the three decides. Hole 200 mm throughout; girth 471.24 mm is 150 mm across.
    [Theory]
    [InlineData(471.239, 0, 0, 50)]
    [InlineData(471.239, 180, 0, 20)]
    [InlineData(471.239, 180, 190, 10)]
    [InlineData(471.239, 180, 210, -10)]
    public void Of_FishDepthAndHooks_LeavesTheLeastMargin(double girth, double depth, double span, double margin)
    {
        var fit = HoleFit.Of(Millimetres(200), Millimetres(girth), Millimetres(depth), Millimetres(span));

        Assert.Equal(margin, fit.Margin.Millimeters, 0.001);
        Assert.Equal(margin / 200, fit.FreeShare.DecimalFractions, 1e-5);
    }

    // 10–15 % of the hole is asked for (judgement).
    [Theory]
    [InlineData(201, false, false, false)]
    [InlineData(185, true, true, false)]
    [InlineData(175, true, false, false)]
    [InlineData(165, true, false, true)]
    public void Of_DeepFish_TellsHowMuchRoomIsLeft(double depth, bool passes, bool tight, bool comfortable)
    {
        var fit = HoleFit.Of(Millimetres(200), Length.Zero, Millimetres(depth), Length.Zero);

        Assert.Equal((passes, tight, comfortable), (fit.Passes, fit.Tight, fit.Comfortable));
    }

    [Fact]
    public void Calculations_OutsideTheirRange_Throw()
    {
        var (length, weight) = (Length.FromInches(30), Mass.FromPounds(8));

        Assert.Throws<ArgumentOutOfRangeException>("hole", () => HoleFit.Of(Length.Zero, length, length, length));
        Assert.Throws<ArgumentOutOfRangeException>("girth", () => HoleFit.Of(length, -length, length, length));
        Assert.Throws<ArgumentOutOfRangeException>(
            "length", () => GirthEstimate.FromLengthAndWeight(Length.Zero, weight));
        Assert.Throws<ArgumentOutOfRangeException>(
            "weight", () => GirthEstimate.FromLengthAndWeight(length, Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(
            "divisor", () => GirthEstimate.FromLengthAndWeight(length, weight, 400));
    }

    private static Length Girth(PublishedRow row) => GirthEstimate.FromLengthAndWeight(
        Length.FromInches(row["length_inch"]), Mass.FromPounds(row["weight_lb"]));

    private static Length Millimetres(double millimetres) => Length.FromMillimeters(millimetres);
}
