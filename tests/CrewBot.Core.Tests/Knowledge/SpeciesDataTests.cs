using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class SpeciesDataTests
{
    private static readonly RecordSet<Species> Species = TradeKnowledge.BuiltIn.Species;

    [Fact]
    public void Species_AsShipped_AreTheTwentyTwoOfTheTrade() => Assert.Equal(
        [
            "arctic-char", "black-crappie", "bluegill", "brook-trout", "brown-trout", "burbot", "cisco", "european-perch",
            "lake-trout", "lake-whitefish", "largemouth-bass", "muskellunge", "northern-pike", "pumpkinseed", "rainbow-trout",
            "sauger", "smallmouth-bass", "splake", "walleye", "white-crappie", "yellow-perch", "zander",
        ],
        Species.Select(species => species.Key).Order(StringComparer.Ordinal));

    // Standard weight at the metric memorable and trophy lengths. Equations: R package FSA 0.10.0, data set WSlit
    // (Murphy et al. 1990 for walleye, Willis et al. 1991 for yellow perch, Piccolo et al. 1993 for lake trout, and so
    // on); lengths: its data set PSDlit (Gabelhouse 1984 and later).
    [Theory]
    [InlineData("walleye", 630, 2.81, 760, 5.10)]
    [InlineData("sauger", 510, 1.37, 630, 2.69)]
    [InlineData("yellow-perch", 300, 0.412, 380, 0.885)]
    [InlineData("northern-pike", 860, 4.45, 1120, 10.08)]
    [InlineData("muskellunge", 1070, 10.16, 1270, 17.95)]
    [InlineData("lake-trout", 800, 5.53, 1000, 11.40)]
    [InlineData("brook-trout", 500, 1.54, 600, 2.72)]
    [InlineData("rainbow-trout", 650, 3.26, 800, 6.06)]
    [InlineData("brown-trout", 500, 1.58, 600, 2.83)]
    [InlineData("burbot", 670, 2.10, 820, 3.77)]
    [InlineData("black-crappie", 300, 0.466, 380, 1.03)]
    [InlineData("white-crappie", 300, 0.409, 380, 0.899)]
    [InlineData("bluegill", 250, 0.378, 300, 0.692)]
    [InlineData("pumpkinseed", 250, 0.383, 300, 0.691)]
    [InlineData("largemouth-bass", 510, 2.16, 630, 4.31)]
    [InlineData("smallmouth-bass", 430, 1.25, 510, 2.16)]
    public void Weights_OfLargeAndTrophy_AreStandardWeights(
        string key, double memorableMm, double memorableKg, double trophyMm, double trophyKg)
    {
        var species = Species[key];

        Assert.Equal(memorableMm, species.Lengths.Large.Millimeters, 0.5);
        Assert.Equal(trophyMm, species.Lengths.Trophy.Millimeters, 0.5);
        Assert.Equal(memorableKg, species.Weights.Large.Kilograms, 0.05 * memorableKg);
        Assert.Equal(trophyKg, species.Weights.Trophy.Kilograms, 0.05 * trophyKg);
    }

    // Standard weight at the metric quality length, same sources: everyday winter fish lie between quality and memorable.
    [Theory]
    [InlineData("walleye", 0.563)]
    [InlineData("sauger", 0.253)]
    [InlineData("yellow-perch", 0.111)]
    [InlineData("northern-pike", 0.994)]
    [InlineData("muskellunge", 3.26)]
    [InlineData("lake-trout", 1.20)]
    [InlineData("brook-trout", 0.317)]
    [InlineData("rainbow-trout", 0.762)]
    [InlineData("brown-trout", 0.309)]
    [InlineData("burbot", 0.406)]
    [InlineData("black-crappie", 0.120)]
    [InlineData("white-crappie", 0.106)]
    [InlineData("bluegill", 0.069)]
    [InlineData("pumpkinseed", 0.073)]
    [InlineData("largemouth-bass", 0.380)]
    [InlineData("smallmouth-bass", 0.318)]
    public void Weights_AroundQualityLength_SmallBelowAndTypicalAbove(string key, double qualityKg)
    {
        var weights = Species[key].Weights;

        Assert.InRange(weights.Small.Kilograms, 0, qualityKg);
        Assert.InRange(weights.Typical.Kilograms, qualityKg, weights.Large.Kilograms);
    }

    // Fisher and Fielder (1998) via FSA 0.10.0: a cisco of 300 mm has a standard weight of 294.60 g.
    [Fact]
    public void Weights_OfTypicalCisco_IsStandardWeight()
    {
        Assert.Equal(300, Species["cisco"].Lengths.Typical.Millimeters, 0.5);
        Assert.Equal(294.60, Species["cisco"].Weights.Typical.Grams, 0.05 * 294.60);
    }

    [Theory]
    [InlineData("eelpout", "burbot")]
    [InlineData("laker", "lake-trout")]
    [InlineData("lakers", "lake-trout")]
    [InlineData("jack", "northern-pike")]
    [InlineData("Northern Pike", "northern-pike")]
    [InlineData("pike", "northern-pike")]
    [InlineData("tullibee", "cisco")]
    [InlineData("specks", "brook-trout")]
    [InlineData("speck", "brook-trout")]
    [InlineData("jumbo", "yellow-perch")]
    [InlineData("perch", "yellow-perch")]
    [InlineData("rainbows", "rainbow-trout")]
    [InlineData("gills", "bluegill")]
    [InlineData("crappie", "black-crappie")]
    [InlineData("crappies", "black-crappie")]
    [InlineData("white crappies", "white-crappie")]
    [InlineData("musky", "muskellunge")]
    [InlineData("muskies", "muskellunge")]
    [InlineData("smallies", "smallmouth-bass")]
    [InlineData("pike-perch", "zander")]
    public void TryFind_CommonName_FindsTheSpecies(string word, string key)
    {
        Assert.True(Species.TryFind(word, out var species));
        Assert.Equal(key, species.Key);
    }

    [Theory]
    [InlineData("trout")]
    [InlineData("bass")]
    [InlineData("pickerel")]
    [InlineData("sunfish")]
    [InlineData("whit")]
    public void TryFind_WordForSeveralFish_FindsNone(string word) => Assert.False(Species.TryFind(word, out _));

    [Fact]
    public void Presentations_OfPanfish_NeverStartWithAnythingLouderThanASmallJig() => Assert.All(
        Species.Where(species => species.Class == SizeClass.Panfish).SelectMany(FirstChoices),
        first => Assert.Contains(first, new[] { "set-bait", "small-jig" }));

    // Order of choice: common practice.
    [Theory]
    [InlineData("walleye", Mood.Negative, "set-bait", "small-jig")]
    [InlineData("walleye", Mood.Neutral, "jigging-spoon")]
    [InlineData("walleye", Mood.Positive, "jigging-spoon", "rattle-bait")]
    [InlineData("northern-pike", Mood.Negative, "dead-bait")]
    [InlineData("northern-pike", Mood.Positive, "large-soft-body", "rattle-bait", "jigging-spoon")]
    [InlineData("lake-trout", Mood.Positive, "large-soft-body", "rattle-bait", "jigging-spoon")]
    public void Presentations_ByMood_StartWithWhatSuits(string key, Mood mood, params string[] expected) =>
        Assert.Equal(expected, Species[key].Presentations[mood].Take(expected.Length));

    // Teeth: South Dakota state page (pike); wire is not needed for walleye: common practice.
    [Fact]
    public void Teeth_ThatCut_BelongToPikeAndMuskellungeAlone() => Assert.Equal(
        ["muskellunge", "northern-pike"],
        Species.Where(species => species.Teeth == Teeth.Cuts).Select(species => species.Key).Order(StringComparer.Ordinal));

    // Closed-bladder fish: caution from 25 ft (7.5 m), agency depth advice for catch-and-release; yellow perch through
    // the ice: 37 % swam down again from 6.0 m (Bemidji student study). Trout, char, whitefish and pike can vent.
    [Fact]
    public void BarotraumaDepth_OfClosedBladderFish_IsAtMostTheAgencyAdvice()
    {
        string[] closed =
        [
            "walleye", "sauger", "zander", "yellow-perch", "european-perch", "black-crappie", "white-crappie", "bluegill",
            "pumpkinseed", "largemouth-bass", "smallmouth-bass", "burbot",
        ];

        Assert.All(closed, key => Assert.InRange(Species[key].BarotraumaDepth!.Value.Feet, 15, 25.01));
        Assert.All(Species.Where(species => !closed.Contains(species.Key)), species => Assert.Null(species.BarotraumaDepth));
    }

    private static IEnumerable<string> FirstChoices(Species species) =>
        Enum.GetValues<Mood>().Select(mood => species.Presentations[mood][0]);
}
