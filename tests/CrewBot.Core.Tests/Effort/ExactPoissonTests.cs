using CrewBot.Core.Effort;
using CrewBot.Core.Tests.Published;
using CsCheck;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace CrewBot.Core.Tests.Effort;

public sealed class ExactPoissonTests
{
    private static readonly Gen<double> AnyConfidence = Gen.OneOf(0.5, 0.8, 0.9, 0.95, 0.99);

    [Theory]
    [PublishedRows("poisson_lower")]
    public void Limits_CountInTable_HasItsLowerEnd(PublishedRow row) =>
        row.Check(ExactPoisson.Limits((int)row["x"], row["conf"]).Low);

    [Theory]
    [PublishedRows("poisson_upper")]
    public void Limits_CountInTable_HasItsUpperEnd(PublishedRow row) =>
        row.Check(ExactPoisson.Limits((int)row["x"], row["conf"]).High);

    [Theory]
    [PublishedRows("catch_rate_lower")]
    public void Limits_RateInTable_HasItsLowerEnd(PublishedRow row) => row.Check(Rate(row).Low.PerLineHour);

    [Theory]
    [PublishedRows("catch_rate_upper")]
    public void Limits_RateInTable_HasItsUpperEnd(PublishedRow row) => row.Check(Rate(row).High.PerLineHour);

    // Bisection on the regularised incomplete gamma function with 30 digits, in another language: a crew's ten years
    // must come out as well as an afternoon.
    [Theory]
    [InlineData(100, 81.36399125, 121.6267938)]
    [InlineData(1000, 938.9730184, 1063.952136)]
    [InlineData(5000, 4862.359189, 5140.548949)]
    public void Limits_LargeCount_AgreeWithASecondImplementation(int count, double low, double high)
    {
        var limits = ExactPoisson.Limits(count, 0.95);

        Assert.Equal(low, limits.Low, 1e-6 * low);
        Assert.Equal(high, limits.High, 1e-6 * high);
    }

    [Fact]
    public void Limits_AnyCount_HoldItAndWidenWithConfidence() =>
        Gen.Select(Gen.Int[0, 3000], AnyConfidence).Sample((count, confidence) =>
        {
            var (low, high) = ExactPoisson.Limits(count, confidence);
            var wider = ExactPoisson.Limits(count, (1 + confidence) / 2);

            Assert.InRange(count, low, high);
            Assert.True(wider.Low <= low && wider.High > high);
        });

    // The same rate from more hours: three fish in twenty against thirty in two hundred.
    [Fact]
    public void Limits_MoreEffortAtTheSameRate_AreNarrower() =>
        Gen.Select(Gen.Int[0, 300], Gen.Double[0.5, 100], Gen.Int[2, 10], AnyConfidence).Sample((fish, hours, factor, confidence) =>
        {
            var little = ExactPoisson.Limits(Hours(fish, hours), confidence)!.Value;
            var much = ExactPoisson.Limits(Hours(fish * factor, hours * factor), confidence)!.Value;

            Assert.True(Width(much) < Width(little));
            Assert.InRange(fish / hours, much.Low.PerLineHour, much.High.PerLineHour);
        });

    // What "exact" promises: whatever the true mean, the counts whose limits hold it make up at least the confidence.
    [Fact]
    public void Limits_AnyTrueMean_HoldItAtLeastAsOftenAsTheySay() =>
        Gen.Select(Gen.Double[0.05, 30], AnyConfidence).Sample((mean, confidence) =>
        {
            var held = Enumerable.Range(0, 120).Where(count =>
            {
                var (low, high) = ExactPoisson.Limits(count, confidence);
                return low <= mean && mean <= high;
            });

            Assert.True(held.Sum(count => Poisson.PMF(mean, count)) >= confidence - 1e-9);
        });

    [Fact]
    public void Limits_NoLineDown_AreUnknown() => Assert.Null(ExactPoisson.Limits(Hours(0, 0), 0.95));

    [Theory]
    [InlineData(-1, 0.95, "count")]
    [InlineData(1, 0, "confidence")]
    [InlineData(1, 1, "confidence")]
    [InlineData(1, double.NaN, "confidence")]
    public void Limits_OutsideTheirRange_Throw(int count, double confidence, string parameter) =>
        Assert.Throws<ArgumentOutOfRangeException>(parameter, () => ExactPoisson.Limits(count, confidence));

    private static RateInterval Rate(PublishedRow row) =>
        ExactPoisson.Limits(Hours((int)row["x"], row["hours"]), row["conf"])!.Value;

    private static double Width(RateInterval interval) => interval.High.PerLineHour - interval.Low.PerLineHour;

    private static Tally Hours(int fish, double hours) => new(fish, Duration.FromHours(hours));
}
