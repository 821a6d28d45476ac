using System.Globalization;
using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Fish;

public sealed class ClassedLengthTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    private static readonly Gen<Species> AnyWithCategories =
        Gen.OneOf(Species.Where(species => species.LengthCategories is not null).ToArray());

    [Theory]
    [PublishedRows("length_category")]
    public void Of_LengthInTable_AgreesWithTable(PublishedRow row)
    {
        var metric = row.Has("tl_cm");
        var read = decimal.Parse(row.Inputs[metric ? "tl_cm" : "tl_in"], CultureInfo.InvariantCulture);

        var classed = ClassedLength.Of(
            Species[row.Inputs["species"]], ExactLength.From(read, metric ? LengthUnit.Centimeter : LengthUnit.Inch))!;

        Assert.Equal(row.Expected, classed.Category.ToString().ToLowerInvariant());
        Assert.Equal(metric ? UnitFamily.Metric : UnitFamily.Inch, classed.By);
    }

    // Every bound of every published table, on the line and a nanometre short of it.
    [Theory]
    [PublishedRows("length_bounds_metric", "length_bounds_inch")]
    public void Of_LengthOnABound_BelongsToTheHigherCategory(PublishedRow row)
    {
        var tables = PublishedSpecies.Categories(row.Inputs["species"]);
        var unit = row.Unit == "cm" ? LengthUnit.Centimeter : LengthUnit.Inch;

        var category = LengthCategory.Substock;
        foreach (var bound in PublishedSpecies.Numbers(row))
        {
            var onTheLine = ExactLength.From((decimal)bound, unit);
            Assert.Equal(category, ClassedLength.Of(tables, new ExactLength(onTheLine.Nanometres - 1, unit)).Category);
            Assert.Equal(++category, ClassedLength.Of(tables, onTheLine).Category);
        }
    }

    [Fact]
    public void LengthCategories_OfEverySpecies_AreThePublishedOnesOrNone() => Assert.All(Species, species =>
    {
        if (PublishedSpecies.Find("length_bounds_inch", species.Key) is null)
        {
            Assert.Null(species.LengthCategories);
            return;
        }

        var (published, ours) = (PublishedSpecies.Categories(species.Key), species.LengthCategories!);
        Assert.Equal(PublishedSpecies.Millimetres(published.Metric), PublishedSpecies.Millimetres(ours.Metric));
        Assert.Equal(PublishedSpecies.Millimetres(published.Inch), PublishedSpecies.Millimetres(ours.Inch));
    });

    [Fact]
    public void Of_LongerFish_IsNeverInALowerCategory() =>
        Gen.Select(AnyWithCategories, Gen.OneOf(LengthUnit.Inch, LengthUnit.Centimeter), Gen.Long[0, 1_500_000_000], Gen.Long[0, 200_000_000])
            .Sample((species, unit, nanometres, more) =>
                ClassedLength.Of(species, new ExactLength(nanometres + more, unit))!.Category
                    >= ClassedLength.Of(species, new ExactLength(nanometres, unit))!.Category);

    [Theory]
    [InlineData("cisco")]
    [InlineData("lake-whitefish")]
    [InlineData("zander")]
    public void Of_SpeciesWithoutCategories_IsNothing(string key) =>
        Assert.Null(ClassedLength.Of(Species[key], ExactLength.From(20, LengthUnit.Inch)));
}
