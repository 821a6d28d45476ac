using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;

namespace CrewBot.Core.Tests.Fish;

public sealed class StandardWeightTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    [Theory]
    [PublishedRows("standard_weight", "standard_weight_at_category")]
    public void Of_LengthInTable_AgreesWithTable(PublishedRow row) =>
        row.Check(WeightOf(row, Length.FromMillimeters(row["tl_mm"])).Grams);

    // The English coefficients are the metric ones rounded, to within 0.0018 in the intercept: 0.42 % in weight.
    [Theory]
    [PublishedRows("standard_weight_in_pounds", "standard_weight_english")]
    public void Of_LengthInInches_AgreesWithTable(PublishedRow row) =>
        row.Check(WeightOf(row, Length.FromInches(row["tl_in"])).Pounds);

    [Theory]
    [PublishedRows("standard_weight_status")]
    public void Of_AtTheEdgesOfTheEquation_SaysWhetherItHolds(PublishedRow row)
    {
        var standard = StandardWeight.Of(Species[row.Inputs["species"]], Length.FromMillimeters(row["tl_mm"]));

        Assert.Equal(Enum.Parse<StandardWeightStatus>(row.Expected), standard.Status);
        Assert.Equal(standard.Status == StandardWeightStatus.Computed, standard.Weight is not null);
        Assert.Equal(standard.Status == StandardWeightStatus.Computed, standard.WhyNot is null);
    }

    // A trip through inches must not push a fish of the minimum length below it.
    [Theory]
    [InlineData("walleye", 150)]
    [InlineData("bluegill", 80)]
    [InlineData("burbot", 200)]
    public void Of_MinimumLengthMeasuredInInches_StillHasAValue(string key, double millimetres) => Assert.Equal(
        StandardWeightStatus.Computed,
        StandardWeight.Of(Species[key], Length.FromInches(millimetres / 25.4)).Status);

    // log Ws = a + b log TL, and log 1000 = 3.
    [Theory]
    [PublishedRows("standard_weight_intercept")]
    public void Of_MetreLongFish_LeadsBackToTheIntercept(PublishedRow row)
    {
        var equation = PublishedSpecies.Equation(row.Inputs["species"]);

        row.Check(Math.Log10(StandardWeight.Of(equation, Length.FromMeters(1)).Weight!.Value.Grams) - (3 * equation.Slope));
    }

    [Theory]
    [PublishedRows("standard_weight_slope")]
    public void Of_FishTenTimesAsLong_LeadsBackToTheSlope(PublishedRow row)
    {
        var equation = PublishedSpecies.Equation(row.Inputs["species"]);
        var weights = new[] { 0.4, 4 }.Select(metres => StandardWeight.Of(equation, Length.FromMeters(metres)).Weight!.Value);

        row.Check(Math.Log10(weights.Last() / weights.First()));
    }

    [Theory]
    [PublishedRows("standard_weight_min_length")]
    public void Of_AMillimetreBelowTheMinimum_HasNoValue(PublishedRow row)
    {
        var equation = PublishedSpecies.Equation(row.Inputs["species"]);
        StandardWeightStatus Status(double millimetres) =>
            StandardWeight.Of(equation, Length.FromMillimeters(millimetres)).Status;

        Assert.Equal(StandardWeightStatus.BelowMinimumLength, Status(row.Value - 1));
        Assert.Equal(StandardWeightStatus.Computed, Status(row.Value));
    }

    [Fact]
    public void StandardWeight_OfEverySpecies_IsThePublishedOneOrNone() => Assert.All(Species, species =>
    {
        if (PublishedSpecies.Find("standard_weight_slope", species.Key) is null)
        {
            Assert.Null(species.StandardWeight);
            return;
        }

        var (published, ours) = (PublishedSpecies.Equation(species.Key), species.StandardWeight!);
        Assert.Equal((published.Intercept, published.Slope), (ours.Intercept, ours.Slope));
        Assert.Equal(published.MinimumLength.Millimeters, ours.MinimumLength.Millimeters, 1e-9);
    });

    [Fact]
    public void Of_LongerFish_NeverWeighsLess() =>
        Gen.Select(Gen.OneOf(Species.Where(species => species.StandardWeight is not null).ToArray()), Gen.Double[400, 1500], Gen.Double[0, 50])
            .Sample((species, millimetres, more) =>
                WeightOf(species, millimetres + more) >= WeightOf(species, millimetres));

    [Fact]
    public void Of_NoLength_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>("total", () => StandardWeight.Of(Species["walleye"], Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("total", () => StandardWeight.Of(Species["zander"], Length.Zero));
    }

    private static Mass WeightOf(PublishedRow row, Length total) =>
        StandardWeight.Of(PublishedSpecies.Equation(row.Inputs["species"]), total).Weight!.Value;

    private static double WeightOf(Species species, double millimetres) =>
        StandardWeight.Of(species, Length.FromMillimeters(millimetres)).Weight!.Value.Grams;
}
