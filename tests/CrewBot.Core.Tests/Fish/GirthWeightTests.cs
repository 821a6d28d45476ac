using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class GirthWeightTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;
    private static readonly Length Metre = Length.FromMeters(1);

    [Theory]
    [PublishedRows("weight_from_girth")]
    public void Of_InchesInTable_AgreesWithTable(PublishedRow row)
    {
        var (total, girth) = (Length.FromInches(row["length_in"]), Length.FromInches(row["girth_in"]));

        row.Check(GirthWeight.Of(total, girth, row["divisor"]).Pounds);
    }

    [Theory]
    [PublishedRows("weight_from_girth_metric")]
    public void Of_CentimetresInTable_AgreesWithTable(PublishedRow row)
    {
        var (total, girth) = (Length.FromCentimeters(row["length_cm"]), Length.FromCentimeters(row["girth_cm"]));

        row.Check(GirthWeight.Of(total, girth, row["divisor"]).Kilograms);
    }

    [Theory]
    [PublishedRows("girth_divisor_metric")]
    public void Of_CubicMetre_GivesTheMetricDivisor(PublishedRow row) =>
        row.Check(1e6 / GirthWeight.Of(Metre, Metre, row["divisor"]).Kilograms);

    // A water cylinder of the same length and girth weighs 1000 L G²/4π kg.
    [Theory]
    [PublishedRows("girth_cylinder_fill")]
    public void Of_AgainstAWaterCylinder_FillsTheKnownShare(PublishedRow row) =>
        row.Check(GirthWeight.Of(Metre, Metre, row["divisor"]).Kilograms / (1000 / (4 * Math.PI)));

    [Theory]
    [InlineData("walleye", 800)]
    [InlineData("lake-trout", 800)]
    [InlineData("northern-pike", 900)]
    [InlineData("muskellunge", 900)]
    public void Of_Species_TakesItsDivisor(string key, double divisor) => Assert.Equal(
        GirthWeight.Of(Metre, Metre, divisor).Grams, GirthWeight.Of(Species[key], Metre, Metre).Grams, 1e-6);

    [Fact]
    public void Of_AnyFish_IsUndoneByTheGirthEstimate() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[3, 30], Gen.Double[500, 1200]).Sample((length, girth, divisor) =>
        {
            var total = Length.FromInches(length);
            var weight = GirthWeight.Of(total, Length.FromInches(girth), divisor);

            Assert.Equal(girth, GirthEstimate.FromLengthAndWeight(total, weight, divisor).Inches, 1e-9);
        });

    [Fact]
    public void Of_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("total", () => GirthWeight.Of(Length.Zero, Metre, 800));
        Assert.Throws<ArgumentOutOfRangeException>("girth", () => GirthWeight.Of(Metre, Length.Zero, 800));
        Assert.Throws<ArgumentOutOfRangeException>("divisor", () => GirthWeight.Of(Metre, Metre, 28902));
    }

    [Fact]
    public void Estimate_WithGirth_RestsOnTheGirth()
    {
        var (walleye, total, girth) = (Species["walleye"], Length.FromInches(29), Length.FromInches(15));

        var estimate = WeightEstimate.Of(walleye, total, girth)!;

        Assert.Equal(WeightBasis.LengthAndGirth, estimate.Basis);
        Assert.Equal(8.1563, estimate.Weight.Pounds, 0.0005); // as in the table
    }

    [Fact]
    public void Estimate_WithoutGirth_RestsOnTheStandardWeight()
    {
        var estimate = WeightEstimate.Of(Species["walleye"], Length.FromMillimeters(500), null)!;

        Assert.Equal(WeightBasis.StandardWeight, estimate.Basis);
        Assert.Equal(1348.11, estimate.Weight.Grams, 1.3); // as in the table
    }

    [Fact]
    public void Estimate_WithNeither_IsNothing() =>
        Assert.Null(WeightEstimate.Of(Species["lake-whitefish"], Length.FromInches(20), null));
}
