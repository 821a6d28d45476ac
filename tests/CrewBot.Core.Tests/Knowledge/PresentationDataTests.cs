using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class PresentationDataTests
{
    private static readonly TradeKnowledge Knowledge = TradeKnowledge.BuiltIn;

    // The scale from passive to aggressive: common practice.
    [Fact]
    public void Step_FromPassiveToAggressive_IsTheScale() => Assert.Equal(
        [
            ("set-bait", 1), ("small-jig", 2), ("swimming-jig", 3), ("jigging-spoon", 4), ("bladed-spoon", 4),
            ("rattling-spoon", 4), ("rattle-bait", 5), ("large-soft-body", 6), ("dead-bait", null),
        ],
        Knowledge.Presentations.Select(presentation => (presentation.Key, presentation.Step)));

    [Fact]
    public void Loudness_OfBladedAndRattlingSpoons_ExceedsThePlainSpoon()
    {
        var plain = Knowledge.Presentations["jigging-spoon"].Loudness;

        Assert.True(Knowledge.Presentations["bladed-spoon"].Loudness > plain);
        Assert.True(Knowledge.Presentations["rattling-spoon"].Loudness > plain);
    }

    [Fact]
    public void SetLine_AsShipped_IsTheDeadBaitAlone() => Assert.Equal(
        ["dead-bait"],
        Knowledge.Presentations.Where(presentation => presentation.SetLine).Select(presentation => presentation.Key));

    // Lines by presentation and size class: common practice.
    [Theory]
    [InlineData("set-bait", SizeClass.Panfish, 4, 4, 4, 4)]
    [InlineData("set-bait", SizeClass.Mid, 6, 6, 6, 8)]
    [InlineData("small-jig", SizeClass.Panfish, 4, 4, 4, 4)]
    [InlineData("small-jig", SizeClass.Mid, 6, 6, 6, 8)]
    [InlineData("small-jig", SizeClass.Big, 10, 15, 10, 15)]
    [InlineData("swimming-jig", SizeClass.Mid, 8, 8, 8, 8)]
    [InlineData("swimming-jig", SizeClass.Big, 10, 15, 10, 15)]
    [InlineData("jigging-spoon", SizeClass.Panfish, 4, 6, 4, 6)]
    [InlineData("bladed-spoon", SizeClass.Panfish, 4, 6, 4, 6)]
    [InlineData("rattling-spoon", SizeClass.Panfish, 4, 6, 4, 6)]
    [InlineData("jigging-spoon", SizeClass.Mid, 10, 10, 8, 12)]
    [InlineData("bladed-spoon", SizeClass.Mid, 10, 10, 8, 12)]
    [InlineData("rattling-spoon", SizeClass.Mid, 10, 10, 8, 12)]
    [InlineData("rattle-bait", SizeClass.Panfish, 6, 6, 6, 6)]
    [InlineData("rattle-bait", SizeClass.Mid, 10, 15, 8, 12)]
    [InlineData("large-soft-body", SizeClass.Mid, 15, 15, 12, 12)]
    [InlineData("large-soft-body", SizeClass.Big, 20, 30, 15, 25)]
    [InlineData("rattle-bait", SizeClass.Big, 20, 30, 15, 25)]
    [InlineData("jigging-spoon", SizeClass.Big, 20, 30, 15, 25)]
    [InlineData("large-soft-body", SizeClass.Giant, 20, 30, 15, 30)]
    [InlineData("rattle-bait", SizeClass.Giant, 20, 30, 15, 30)]
    [InlineData("jigging-spoon", SizeClass.Giant, 20, 30, 15, 30)]
    [InlineData("dead-bait", SizeClass.Big, 30, 30, 25, 30)]
    [InlineData("dead-bait", SizeClass.Giant, 30, 50, 25, 40)]
    public void Outfits_ForATypicalFish_AreWhatTheTradeTies(
        string key, SizeClass sizeClass, double leastBraid, double mostBraid, double leastLeader, double mostLeader)
    {
        var outfit = Knowledge.Outfits[Knowledge.Presentations[key].Outfits[sizeClass]];

        Assert.InRange(outfit.Braid.PoundsForce, leastBraid - 0.01, mostBraid + 0.01);
        Assert.InRange(outfit.Leader.PoundsForce, leastLeader - 0.01, mostLeader + 0.01);
    }

    // Dead-bait rigs: seven-strand wire of 18 to 27 lb, two trebles of size 6 or 4, 2 for giant baits (angling press).
    [Fact]
    public void DeadBait_AsShipped_IsATwoTrebleRigOnWire()
    {
        var rig = Knowledge.Presentations["dead-bait"];

        Assert.Equal((2, 2), (rig.Hooks, rig.Trebles));
        Assert.All(rig.Sizes, size => Assert.Contains(size.Hook.ToString(), new[] { "6", "4", "2" }));
        Assert.All(rig.Sizes, size => Assert.InRange(size.Length.Inches, 4.99, 10.01));
        Assert.All(rig.Outfits.Values, key => Assert.InRange(Knowledge.Outfits[key].Wire.PoundsForce, 18, 27.01));
    }

    [Fact]
    public void StartWeight_OfEveryClass_LeavesRoomBothWays() => Assert.All(
        from presentation in Knowledge.Presentations
        from start in presentation.StartWeight.Values
        select (presentation.Key, presentation.Sizes, start),
        entry =>
        {
            Assert.True(entry.Sizes.Count(size => size.Weight < entry.start) >= 2, entry.Key);
            Assert.True(entry.Sizes.Count(size => size.Weight > entry.start) >= 3, entry.Key);
        });

    // A bigger fish never starts with a lighter lure or outfit.
    [Fact]
    public void StartWeight_FromClassToClass_NeverFalls() => Assert.All(Knowledge.Presentations, presentation =>
    {
        var classes = presentation.StartWeight.Keys.Order().ToList();
        var weights = classes.Select(each => presentation.StartWeight[each].Grams).ToList();
        var tests = classes.Select(each => Knowledge.Outfits[presentation.Outfits[each]].Braid.PoundsForce).ToList();

        Assert.Equal(weights.Order(), weights);
        Assert.Equal(tests.Order(), tests);
    });

    [Fact]
    public void Texts_AsShipped_FitAPhone() => Assert.All(Knowledge.Presentations, presentation =>
    {
        Assert.All(presentation.Work.Values, text => Assert.InRange(text.Length, 20, 110));
        Assert.InRange(presentation.Bite.Length, 20, 90);
    });

    [Fact]
    public void Materials_OfEveryPresentation_LeaveOneWithoutLead() => Assert.All(
        Knowledge.Presentations,
        presentation => Assert.Contains(presentation.Materials, key => !Knowledge.LureMaterials[key].Lead));

    [Fact]
    public void Baits_OfEveryPresentationInEveryRecord_AreNamedByAFish() => Assert.All(
        Knowledge.Baits,
        bait => Assert.Contains(Knowledge.Species, species => species.Baits.Contains(bait.Key)));
}
