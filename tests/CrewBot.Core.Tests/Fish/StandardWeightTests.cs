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

    [Theory]
    [PublishedRows("standard_weight_intercept", "standard_weight_slope", "standard_weight_min_length")]
    public void StandardWeight_OfEverySpeciesWeKnow_IsTheMetricSet(PublishedRow row)
    {
        // The table also holds species that the knowledge does not.
        Assert.SkipUnless(Species.Has(row.Inputs["species"]), "not a species of the built-in knowledge");
        var equation = Species[row.Inputs["species"]].StandardWeight!;

        row.Check(row.Quantity switch
        {
            "standard_weight_intercept" => equation.Intercept,
            "standard_weight_slope" => equation.Slope,
            _ => equation.MinimumLength.Millimeters,
        });
    }

    [Fact]
    public void StandardWeight_OfASpecies_IsThereWhereOneIsPublished() => Assert.All(
        Species,
        species => Assert.Equal(
            PublishedSpecies.Find("standard_weight_slope", species.Key) is null, species.StandardWeight is null));

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
