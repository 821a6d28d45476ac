using CrewBot.Core.Knowledge;
using CrewBot.Core.Rigs;
using UnitsNet;
using static CrewBot.Core.Tests.Rigs.Planned;

namespace CrewBot.Core.Tests.Rigs;

/// <summary>Which presentation, lure and weight a plan takes by mood, size and wish.</summary>
public sealed class RigChoiceTests
{
    [Fact]
    public void Plan_EverySpeciesInEveryMoodAndSize_HasAPlan() => Assert.All(Trade.Species, species =>
        Assert.All(Enum.GetValues<Mood>(), mood => Assert.All(Enum.GetValues<FishSize>(), size =>
            Assert.NotNull(Planner.Plan(Asks.For(species.Key) with { Mood = mood, Size = size }).Plan))));

    // A jigging spoon is not the first choice for panfish: common practice.
    [Fact]
    public void Plan_Panfish_DoesNotStartWithASpoon() => Assert.All(
        Trade.Species.Where(species => species.Class == SizeClass.Panfish),
        species => Assert.All(Enum.GetValues<Mood>(), mood =>
            Assert.NotEqual("jigging-spoon", First(Asks.For(species.Key) with { Mood = mood }).Presentation.Key)));

    // Calmer fish are never shown something louder: common practice.
    [Fact]
    public void Plan_FirstChoice_GetsNoLouderAsFishGetCalmer() => Assert.All(Trade.Species, species =>
    {
        var loudness = Enum.GetValues<Mood>()
            .Select(mood => First(Asks.For(species.Key) with { Mood = mood }).Presentation.Loudness).ToList();

        Assert.Equal(loudness.Order(), loudness);
    });

    // Negative fish at depth: tungsten before lead, smaller body, still or barely moving; in a positive mood a bigger
    // lead head is fine. Common practice, no source.
    [Theory]
    [InlineData("yellow-perch")]
    [InlineData("walleye")]
    [InlineData("lake-whitefish")]
    public void Plan_NegativeFishAtDepth_GetSmallTungstenHeldStill(string species)
    {
        var deep = Asks.For(species, "small-jig") with { Depth = Length.FromFeet(40) };
        var (negative, positive) = (First(deep with { Mood = Mood.Negative }), First(deep with { Mood = Mood.Positive }));

        Assert.Equal("tungsten", negative.Lure.Material.Key);
        Assert.Equal("lead", positive.Lure.Material.Key);
        Assert.True(negative.Numbers.LureDiameter.Meters < positive.Numbers.LureDiameter.Meters);
        Assert.True(negative.LureLength.Meters <= positive.LureLength.Meters);
        Assert.Contains("still", negative.Presentation.Work[Mood.Negative], StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_NegativeFishAtDepthWithoutTungsten_GetsLeadRatherThanNothing() => Assert.Equal(
        "lead",
        First(Asks.For("walleye", "small-jig") with { Mood = Mood.Negative, Without = new HashSet<string> { "tungsten" } }).Lure.Material.Key);

    [Fact]
    public void Plan_LighterThanUsual_SaysThatItWasAskedFor()
    {
        var usual = First(Asks.For("walleye", "jigging-spoon"));
        var rig = First(Asks.For("walleye", "jigging-spoon") with { Step = -1 });

        Assert.True(rig.Lure.Weight.Grams < usual.Lure.Weight.Grams);
        Assert.EndsWith("as you asked.", Text(rig.Reasons.First(reason => reason.About == "weight").Why), StringComparison.Ordinal);
    }

    // A lure that is lighter by wish still carries a hook that holds the fish.
    [Fact]
    public void Plan_LighterThanUsual_StopsWhereTheHookWouldBendOpen()
    {
        var rig = First(Asks.For("lake-trout", "swimming-jig") with { Size = FishSize.Trophy, Step = -5 });

        Assert.True(rig.Tied.Hook!.Opens.High >= WorkingPull.Of(Trade.Species["lake-trout"].Weights.Trophy));
        Assert.True(rig.IsLightest);
        Assert.Contains("bends open", Text(rig.Reasons.First(reason => reason.About == "weight").Why), StringComparison.Ordinal);
    }

    // Eight feet off bottom is right for lakers in 60 ft and out of the water in a 2-ft bay.
    [Theory]
    [InlineData("lake-trout")]
    [InlineData("rainbow-trout")]
    public void Plan_ShallowWater_KeepsTheLureInTheWater(string species)
    {
        var ask = Asks.For(species) with { Depth = Length.FromFeet(2), Mood = Mood.Positive };

        Assert.True(First(ask).Height.Meters < ask.Depth.Meters);
    }
}
