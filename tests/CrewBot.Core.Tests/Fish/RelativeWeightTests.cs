using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Tests.Published;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace CrewBot.Core.Tests.Fish;

public sealed class RelativeWeightTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    [Theory]
    [PublishedRows("relative_weight")]
    public void Of_FishInTable_AgreesWithTable(PublishedRow row)
    {
        var relative = RelativeWeight.Of(
            Species[row.Inputs["species"]], Length.FromMillimeters(row["tl_mm"]), Mass.FromGrams(row["weight_g"]));

        row.Check(relative!.Share.Percent);
    }

    [Fact]
    public void Of_LengthAndWeightAsStored_IsWhatTheQuantitiesGive() =>
        Gen.Select(Gen.OneOf("walleye", "bluegill", "cisco", "splake"), Gen.Long[1_000_000, 900_000_000], Gen.Long[1_000_000_000, 9_000_000_000_000])
            .Sample((key, nanometres, nanograms) =>
            {
                var total = new ExactLength(nanometres, LengthUnit.Millimeter);
                var weight = new ExactMass(nanograms, MassUnit.Gram);
                var expected = RelativeWeight.Of(Species[key], Length.FromMillimeters(nanometres / 1e6), Mass.FromGrams(nanograms / 1e9));

                return Equals(expected, RelativeWeight.Of(Species[key], total, weight));
            });

    // The words and their bounds are judgement; each bound belongs to the better word.
    [Theory]
    [InlineData(0.74, BodyCondition.Lean)]
    [InlineData(0.75, BodyCondition.Fair)]
    [InlineData(0.94, BodyCondition.Fair)]
    [InlineData(0.95, BodyCondition.Good)]
    [InlineData(1.09, BodyCondition.Good)]
    [InlineData(1.10, BodyCondition.Fat)]
    public void Condition_OfAShare_IsItsWord(double share, BodyCondition condition) =>
        Assert.Equal(condition, new RelativeWeight(Ratio.FromDecimalFractions(share)).Condition);

    [Fact]
    public void Of_MoreWeightAtALength_NeverLowersItOrTheWord() =>
        Gen.Select(Gen.OneOf("walleye", "bluegill", "cisco"), Gen.Double[200, 900], Gen.Double[20, 9000], Gen.Double[0, 500])
            .Sample((key, millimetres, grams, more) =>
            {
                var total = Length.FromMillimeters(millimetres);
                var lighter = RelativeWeight.Of(Species[key], total, Mass.FromGrams(grams))!;
                var heavier = RelativeWeight.Of(Species[key], total, Mass.FromGrams(grams + more))!;

                return heavier.Share.Percent >= lighter.Share.Percent && heavier.Condition >= lighter.Condition;
            });

    [Theory]
    [InlineData("lake-whitefish", 450)]
    [InlineData("splake", 450)]
    [InlineData("walleye", 149)]
    public void Of_FishWithoutAStandardWeight_IsNothing(string key, double millimetres) =>
        Assert.Null(RelativeWeight.Of(Species[key], Length.FromMillimeters(millimetres), Mass.FromGrams(900)));

    [Fact]
    public void Of_NoWeight_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        "weight", () => RelativeWeight.Of(Species["walleye"], Length.FromInches(20), Mass.Zero));
}
