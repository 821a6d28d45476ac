using CrewBot.Core.Effort;
using CsCheck;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace CrewBot.Core.Tests.Effort;

public sealed class CatchPosteriorTests
{
    private static readonly Gen<CatchPosterior> Any = Gen.Select(
        Gen.Double[0.05, 5], Gen.Double[0.5, 50], Gen.Int[0, 400], Gen.Double[0, 400], Posterior);

    // Gamma(18, 28): 0.5 a line-hour for 8 line-hours, then 14 fish in 20. Ends by bisection on the incomplete gamma
    // function with 30 digits, in another language.
    [Theory]
    [InlineData(0.5, 8, 14, 20, 0.642857143, 0.380997885, 0.9720945291)]
    [InlineData(0.5, 8, 0, 0, 0.5, 0.1362331717, 1.095909134)]
    [InlineData(0.5, 8, 3, 1, 0.777777778, 0.3127070057, 1.451052669)]
    [InlineData(0.5, 8, 40, 40, 0.916666667, 0.6660514033, 1.206681621)]
    [InlineData(0.5, 8, 1400, 1000, 1.392857143, 1.320944312, 1.46664915)]
    public void Of_PriorAndTally_HasTheKnownMeanAndInterval(
        double prior, double weight, int fish, double hours, double mean, double low, double high)
    {
        var posterior = Posterior(prior, weight, fish, hours);
        var credible = posterior.Credible(0.95);

        Assert.Equal(mean, posterior.Mean.PerLineHour, 1e-9);
        Assert.Equal(low, credible.Low.PerLineHour, 1e-6);
        Assert.Equal(high, credible.High.PerLineHour, 1e-6);
    }

    // Rates drawn from the prior itself, and catches from those: 95 of 100 intervals must hold the rate that was drawn.
    [Fact]
    public void Credible_RatesDrawnFromThePrior_HoldsThemAsOftenAsItSays()
    {
        const int Draws = 4000;
        var random = new Random(20270116);
        var held = Enumerable.Range(0, Draws).Count(_ =>
        {
            var rate = Gamma.Sample(random, 4, 8);
            var credible = Posterior(0.5, 8, Poisson.Sample(random, rate * 20), 20).Credible(0.95);
            return rate >= credible.Low.PerLineHour && rate <= credible.High.PerLineHour;
        });

        Assert.Equal(0.95, held / (double)Draws, 0.014); // four standard errors
    }

    // The double integral over both densities, by quadrature with 30 digits, in another language.
    [Theory]
    [InlineData(0.5, 8, 14, 20, 0.5, 8, 3, 1, 0.3627097832)]
    [InlineData(0.5, 8, 3, 1, 0.5, 8, 40, 40, 0.3058292481)]
    [InlineData(0.5, 8, 40, 40, 0.5, 8, 20, 40, 0.9930330625)]
    [InlineData(0.5, 8, 500, 1000, 0.5, 8, 600, 1000, 0.001317514615)]
    [InlineData(0.5, 5, 0, 0, 1, 10, 20, 10, 0.01753238066)]
    public void ChanceOver_AnotherCell_AgreesWithQuadrature(
        double prior, double weight, int fish, double hours,
        double otherPrior, double otherWeight, int otherFish, double otherHours, double chance) =>
        Assert.Equal(
            chance,
            Posterior(prior, weight, fish, hours).ChanceOver(Posterior(otherPrior, otherWeight, otherFish, otherHours)),
            1e-8);

    [Fact]
    public void Mean_AnyTally_LiesBetweenPriorAndData() =>
        Gen.Select(Gen.Double[0.05, 5], Gen.Double[0.5, 50], Gen.Int[0, 400], Gen.Double[0.1, 400])
            .Sample((prior, weight, fish, hours) =>
            {
                var (mean, data) = (Posterior(prior, weight, fish, hours).Mean.PerLineHour, fish / hours);
                var rounding = 1e-12 * Math.Max(prior, data);

                Assert.InRange(mean, Math.Min(prior, data) - rounding, Math.Max(prior, data) + rounding);
            });

    [Fact]
    public void Credible_AnyPosterior_HoldsTheMedianAndWidensWithProbability() => Any.Sample(posterior =>
    {
        var (half, most) = (posterior.Credible(0.5), posterior.Credible(0.95));

        Assert.True(most.Low.PerLineHour < half.Low.PerLineHour && half.High.PerLineHour < most.High.PerLineHour);
        Assert.InRange(posterior.Mean.PerLineHour, most.Low.PerLineHour, most.High.PerLineHour);
    });

    [Fact]
    public void ChanceOver_EachOther_SumsToOne() => Gen.Select(Any, Any).Sample((one, other) =>
        Assert.Equal(1, one.ChanceOver(other) + other.ChanceOver(one), 1e-9));

    [Fact]
    public void ChanceOver_Itself_IsAHalf() =>
        Any.Sample(posterior => Assert.Equal(0.5, posterior.ChanceOver(posterior), 1e-9));

    [Fact]
    public void ChanceOver_AfterAnotherFish_IsGreater() =>
        Gen.Select(Any, Gen.Int[0, 50], Gen.Double[1, 50]).Sample((other, fish, hours) =>
            Posterior(0.5, 8, fish + 1, hours).ChanceOver(other) >= Posterior(0.5, 8, fish, hours).ChanceOver(other));

    [Fact]
    public void CatchPrior_OutsideItsRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("mean", () => new CatchPrior(new CatchRate(0), Duration.FromHours(8)));
        Assert.Throws<ArgumentOutOfRangeException>("weight", () => new CatchPrior(new CatchRate(1), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => Posterior(1, 8, 0, 0).Credible(1));
    }

    private static CatchPosterior Posterior(double prior, double weight, int fish, double hours) => CatchPosterior.Of(
        new CatchPrior(new CatchRate(prior), Duration.FromHours(weight)), new Tally(fish, Duration.FromHours(hours)));
}
