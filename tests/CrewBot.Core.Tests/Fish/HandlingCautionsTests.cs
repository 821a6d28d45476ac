using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class HandlingCautionsTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    [Theory]
    [PublishedRows("release_depth_advice")]
    public void For_WalleyeAtADepthAgenciesWarnOf_Cautions(PublishedRow row) =>
        Assert.Single(HandlingCautions.For(Species["walleye"], Length.FromFeet(row.Value), null));

    // Caution from 25 ft, a strong one from 30 ft, or 9 m where a crew measures in metres.
    [Theory]
    [InlineData("walleye", 24.9, "")]
    [InlineData("walleye", 25, "may not get back down")]
    [InlineData("walleye", 29, "may not get back down")]
    [InlineData("walleye", 30, "still die")]
    [InlineData("black-crappie", 30, "still die")]
    [InlineData("yellow-perch", 20, "may not get back down")]
    [InlineData("lake-trout", 100, "")]
    [InlineData("northern-pike", 40, "")]
    [InlineData("lake-whitefish", 60, "")]
    public void For_FishFromADepth_CautionsClosedBladdersAlone(string key, double feet, string words) =>
        AssertSays(words, HandlingCautions.For(Species[key], Length.FromFeet(feet), null));

    [Fact]
    public void For_NineMetres_IsStrong() =>
        AssertSays("still die", HandlingCautions.For(Species["walleye"], Length.FromMeters(9), null));

    [Theory]
    [InlineData(1, "")]
    [InlineData(0, "")]
    [InlineData(-0.1, "gills freeze")]
    [InlineData(-12, "gills freeze")]
    [InlineData(-12.1, "gills and eyes freeze")]
    public void For_AirBelowFreezing_Cautions(double celsius, string words) => AssertSays(
        words, HandlingCautions.For(Species["lake-trout"], null, Temperature.FromDegreesCelsius(celsius)));

    [Fact]
    public void For_FreezingPointInFahrenheit_IsNotBelowIt() =>
        Assert.Empty(HandlingCautions.For(Species["lake-trout"], null, Temperature.FromDegreesFahrenheit(32)));

    [Fact]
    public void For_DeepFishOnAColdDay_CautionsOfBothAndNamesTheTriggers()
    {
        var cautions = HandlingCautions.For(Species["walleye"], Length.FromFeet(33), Temperature.FromDegreesCelsius(-20));

        Assert.Equal(2, cautions.Count);
        Assert.All(cautions, caution => Assert.NotEmpty(FormattableString.Invariant(caution.Trigger)));
        Assert.Contains("swells 2.0 times", FormattableString.Invariant(cautions[0].Trigger), StringComparison.Ordinal);
    }

    [Fact]
    public void For_EveryDepthCaution_LeavesTheLastWordToLocalRules() => Assert.All(
        new[] { 26, 31 }.Select(feet => HandlingCautions.For(Species["walleye"], Length.FromFeet(feet), null).Single()),
        caution => Assert.Contains("ocal rules", caution.Text.Format, StringComparison.Ordinal));

    [Fact]
    public void For_NothingKnown_SaysNothing() => Assert.Empty(HandlingCautions.For(Species["walleye"], null, null));

    [Fact]
    public void For_DepthOutsideItsRange_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "depth", () => HandlingCautions.For(Species["walleye"], Length.FromMeters(201), null));

    private static void AssertSays(string words, IReadOnlyList<CrewBot.Core.Rigs.Caution> cautions)
    {
        if (words.Length == 0)
        {
            Assert.Empty(cautions);
        }
        else
        {
            Assert.Contains(words, Assert.Single(cautions).Text.Format, StringComparison.Ordinal);
        }
    }
}
