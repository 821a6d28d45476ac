using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class HardwareDataTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;

    // British float-fishing shot scale, retailer guide; any one shot is good to a tenth.
    [Theory]
    [InlineData("SSG", 1.6)]
    [InlineData("AAA", 0.8)]
    [InlineData("BB", 0.4)]
    [InlineData("No 1", 0.3)]
    [InlineData("No 4", 0.2)]
    [InlineData("No 6", 0.1)]
    [InlineData("No 8", 0.06)]
    [InlineData("No 9", 0.05)]
    [InlineData("No 10", 0.04)]
    [InlineData("No 11", 0.03)]
    [InlineData("No 12", 0.02)]
    [InlineData("No 13", 0.01)]
    public void Mass_OnTheBritishScale_IsTheGuides(string size, double grams) =>
        Assert.Equal(grams, Grams(ShotScale.British, size), 0.1 * grams);

    // North American lead shot, angling article chart, in ounces; grams by 1 oz = 28.349523125 g.
    [Theory]
    [InlineData("B", 0.2953)]
    [InlineData("BB", 0.443)]
    [InlineData("3/0", 0.567)]
    [InlineData("7", 1.181)]
    [InlineData("5", 2.181)]
    [InlineData("4", 2.362)]
    [InlineData("3", 2.835)]
    [InlineData("1", 4.725)]
    [InlineData("0", 7.087)]
    public void Mass_OnTheNorthAmericanScale_IsTheCharts(string size, double grams) =>
        Assert.Equal(grams, Grams(ShotScale.NorthAmerican, size), 0.001 * grams);

    [Fact]
    public void Size_SharedByBothScales_NamesTwoMasses() =>
        Assert.NotEqual(Grams(ShotScale.British, "BB"), Grams(ShotScale.NorthAmerican, "BB"), 0.01);

    [Fact]
    public void TryFind_ShotSizeWithoutItsScale_FindsNone() => Assert.False(Knowledge.SplitShot.TryFind("BB", out _));

    // Plain handbook densities, from memory; tungsten jigs are alloys of 17 to 19 g/cm3.
    [Theory]
    [InlineData("lead", 11.34, 11.34)]
    [InlineData("tungsten", 17, 19)]
    [InlineData("bismuth", 9.7, 9.8)]
    [InlineData("tin", 7.2, 7.4)]
    [InlineData("brass", 8.4, 8.8)]
    [InlineData("steel", 7.75, 8.05)]
    public void Density_OfLureMaterial_IsTheHandbooks(string key, double least, double most) =>
        Assert.InRange(Knowledge.LureMaterials[key].Density.GramsPerCubicCentimeter, least - 1e-9, most + 1e-9);

    [Fact]
    public void Lead_OfLureMaterials_IsLeadAlone() =>
        Assert.Equal(["lead"], Knowledge.LureMaterials.Where(material => material.Lead).Select(material => material.Key));

    // Sizes of one kind: a stronger piece is a bigger piece (common practice), so no rating stands twice.
    [Fact]
    public void Rated_WithinAKind_ClimbsWithTheSize() => Assert.All(
        Knowledge.Hardware.GroupBy(piece => piece.Kind),
        kind =>
        {
            var ratings = kind.Select(piece => piece.Rated.PoundsForce).ToList();
            Assert.Equal(ratings.Distinct().Order(), ratings);
        });

    // A hook without a rating could not be the weakest link.
    [Fact]
    public void Hooks_OfEveryLureAndFish_AreRated()
    {
        var used = Knowledge.Presentations.SelectMany(presentation => presentation.Sizes).Select(size => size.Hook).OfType<HookSize>()
            .Concat(Knowledge.Species.SelectMany(species => new[] { species.Hooks.Low, species.Hooks.High }))
            .Distinct();

        Assert.All(used, size => Assert.Contains(Knowledge.Hooks, rating => rating.Size == size));
    }

    [Theory]
    [InlineData(BreakPlace.AtLure, BreakLook.Curl, "knot slipped")]
    [InlineData(BreakPlace.InLeader, BreakLook.Clean, "Bitten off")]
    [InlineData(BreakPlace.InLeader, BreakLook.Frayed, "teeth")]
    [InlineData(BreakPlace.InLeader, BreakLook.Flattened, "split shot")]
    [InlineData(BreakPlace.AtHook, BreakLook.Straightened, "drag")]
    public void Cause_OfABreak_NamesTheLink(BreakPlace place, BreakLook look, string link) =>
        Assert.Contains(link, Assert.Single(Knowledge.BreakSigns, sign => sign.Place == place && sign.Look == look).Cause, StringComparison.Ordinal);

    private static double Grams(ShotScale scale, string size) =>
        Assert.Single(Knowledge.SplitShot, shot => shot.Scale == scale && shot.Size == size).Mass.Grams;
}
