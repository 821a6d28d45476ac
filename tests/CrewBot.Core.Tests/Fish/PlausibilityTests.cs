using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class PlausibilityTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    // Judgement: 1.4 trophies.
    [Theory]
    [InlineData("yellow-perch", 53.2)]
    [InlineData("walleye", 106.4)]
    [InlineData("northern-pike", 156.8)]
    public void LongestLength_OfASpecies_IsBeyondItsTrophy(string key, double centimetres) =>
        Assert.Equal(centimetres, Plausibility.LongestLength(Species[key]).Centimeters, 1e-9);

    [Fact]
    public void ExpectedWeight_OfASpeciesWithAnEquation_LiesAroundTheStandardWeight()
    {
        var range = Plausibility.ExpectedWeight(Species["walleye"], Length.FromMillimeters(500));

        Assert.Equal(0.5 * 1348.11, range.Low.Grams, 0.1); // the standard weight is a published value
        Assert.Equal(1.5 * 1348.11, range.High.Grams, 0.1);
    }

    // Relative weights of real fish, computed from public data sets: lake trout of an Alaskan lake 59-124 %, pike of a
    // Finnish lake 68-100 %, nine of ten cisco of a Wisconsin lake 66-88 %.
    [Theory]
    [InlineData("lake-trout", 0.59)]
    [InlineData("lake-trout", 1.24)]
    [InlineData("northern-pike", 0.68)]
    [InlineData("cisco", 0.66)]
    public void ExpectedWeight_OfRealFish_HoldsThem(string key, double relative)
    {
        var (species, total) = (Species[key], Species[key].Lengths.Typical);
        var weight = StandardWeight.Of(species, total).Weight!.Value * relative;

        Assert.True(Plausibility.ExpectedWeight(species, total).Contains(weight));
    }

    // What the bounds are there for: ounces for pounds, pounds for kilograms, and a slipped decimal.
    [Theory]
    [InlineData("walleye", 1.0 / 16)]
    [InlineData("walleye", 0.45)]
    [InlineData("walleye", 10)]
    [InlineData("zander", 0.1)]
    [InlineData("lake-whitefish", 2.2)]
    [InlineData("lake-whitefish", 10)]
    public void ExpectedWeight_OfASlip_DoesNotHoldIt(string key, double factor)
    {
        var species = Species[key];
        var range = Plausibility.ExpectedWeight(species, species.Lengths.Typical);

        Assert.False(range.Contains(species.Weights.Typical * factor));
    }

    [Fact]
    public void ExpectedWeight_OfEveryUsualSize_HoldsIt() => Assert.All(
        from species in Species from size in Enum.GetValues<FishSize>() select (species, size),
        usual => Assert.True(Plausibility
            .ExpectedWeight(usual.species, usual.species.Lengths[usual.size])
            .Contains(usual.species.Weights[usual.size])));

    [Fact]
    public void ExpectedWeight_WithoutAnEquation_ScalesTheNearestUsualSizeByTheCube()
    {
        var zander = Species["zander"];

        var range = Plausibility.ExpectedWeight(zander, zander.Lengths.Trophy * 1.2);

        Assert.Equal(0.4 * 1.728 * zander.Weights.Trophy.Grams, range.Low.Grams, 1e-6);
        Assert.Equal(2 * 1.728 * zander.Weights.Trophy.Grams, range.High.Grams, 1e-6);
    }

    [Fact]
    public void ExpectedWeight_BelowTheEquationsMinimum_StillAsks() =>
        Assert.False(Plausibility.ExpectedWeight(Species["walleye"], Length.FromCentimeters(10)).Contains(Mass.FromKilograms(1)));

    [Fact]
    public void ExpectedWeight_NoLength_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "total", () => Plausibility.ExpectedWeight(Species["walleye"], Length.Zero));
}
