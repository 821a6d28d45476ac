using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;

namespace CrewBot.Core.Tests.Rigs;

public class ShotPinchTests
{
    // Masses of the sizes: British float-fishing shot scale (retailer guide) and North American lead shot (angling article
    // chart); the fewest shot are common practice.
    [Theory]
    [InlineData(1.6, ShotScale.British, 1, "SSG")]
    [InlineData(0.8, ShotScale.British, 1, "AAA")]
    [InlineData(1.2, ShotScale.British, 3, "BB")]
    [InlineData(1.77185, ShotScale.NorthAmerican, 3, "3/0")]
    [InlineData(2.362, ShotScale.NorthAmerican, 1, "4")]
    public void For_Weight_GivesTheFewestShotWithinATenth(double grams, ShotScale scale, int count, string size)
    {
        var pinch = ShotPinch.For(Mass.FromGrams(grams), TradeKnowledge.BuiltIn.SplitShot, scale);

        Assert.NotNull(pinch);
        Assert.Equal((count, size), (pinch.Count, pinch.Shot.Size));
    }

    [Fact]
    public void For_WeightBeyondFourOfTheLargest_GivesNone() =>
        Assert.Null(ShotPinch.For(Mass.FromGrams(40), TradeKnowledge.BuiltIn.SplitShot, ShotScale.British));
}
