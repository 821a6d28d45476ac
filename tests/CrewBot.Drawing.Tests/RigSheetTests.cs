using CrewBot.Chat.Commands;
using CrewBot.Core.Pictures;
using CrewBot.Drawing.Inks;
using CrewBot.Drawing.Sheets;
using CsCheck;

namespace CrewBot.Drawing.Tests;

public sealed class RigSheetTests(PictureFixture pictures)
{
    private const int Plans = 500;
    private const int MostPlans = 800;

    private static readonly Gen<string> Question =
        from species in Gen.OneOf("walleye", "pike", "perch", "lake trout", "bluegill", "crappie", "burbot")
        from verb in Gen.OneOf("plan", "pair")
        from feet in Gen.Int[3, 120]
        from mood in Gen.OneOf("negative", "neutral", "positive")
        from size in Gen.OneOf("small", "typical", "trophy")
        select $"/rig {verb} species:\"{species}\" depth:{feet}ft mood:{mood} size:{size}";

    [Theory]
    [InlineData("/rig plan species:walleye depth:24ft mood:negative")]
    [InlineData("/rig plan species:pike depth:10ft presentation:\"dead bait\"")]
    [InlineData("/rig plan species:\"lake trout\" depth:80ft mood:positive")]
    [InlineData("/rig pair species:walleye depth:24ft")]
    [InlineData("/rig check mainline:\"braid 6lb\" leader:\"fluorocarbon 8lb 24in\" join:\"double uni\" knot:palomar lure:\"1/4oz jigging spoon\" species:walleye")]
    public async Task LayOut_Rig_EveryPartIsLabelledInsideAndApart(string line)
    {
        var picture = Assert.IsType<RigPicture>(await pictures.AskAsync(line));
        var sheet = Illustrator.LayOut(picture);

        Assert.Empty(SheetChecks.FaultsOf(sheet));
        var lettered = string.Join(' ', sheet.Texts.Select(text => text.Text));
        Assert.All(
            picture.Rigs.SelectMany(rig => rig.Parts),
            part => Assert.All(part.Label.Split(' '), word => Assert.Contains(word, lettered, StringComparison.Ordinal)));
        Assert.Contains("weakest:", lettered, StringComparison.Ordinal);
    }

    [Fact]
    public void LayOut_FiveHundredPlans_NoneOverlapsOrLeavesThePicture()
    {
        var drawn = 0;
        Question.Select(Gen.Bool).Sample(
            (line, metric) =>
            {
                var units = metric ? CrewUnits.Metric : CrewUnits.Customary;
                if (pictures.AskAsync(line, units).GetAwaiter().GetResult() is { } picture)
                {
                    Assert.Empty(SheetChecks.FaultsOf(Illustrator.LayOut(picture)));
                    Assert.NotEmpty(picture.AlternativeText);
                    Interlocked.Increment(ref drawn);
                }
            },
            iter: MostPlans,
            threads: 2);

        // Some depths are beyond a species; most questions have an answer.
        Assert.InRange(drawn, Plans, MostPlans);
    }

    [Fact]
    public async Task LayOut_SamePictureTwice_GivesTheSameMarks()
    {
        var picture = await pictures.AskAsync("/rig plan species:walleye depth:24ft mood:negative");

        Assert.Equal(Texts(Illustrator.LayOut(picture!)), Texts(Illustrator.LayOut(picture!)));
    }

    // A shot is pinched onto the leader, above the knot at the hook.
    [Fact]
    public async Task Picture_OfASetBait_HangsTheWeightAboveTheLastKnot()
    {
        var picture = Assert.IsType<RigPicture>(await pictures.AskAsync("/rig plan species:walleye depth:24ft mood:negative"));

        Assert.Equal(
            [PartKind.Strand, PartKind.Shot, PartKind.Knot, PartKind.Hook, PartKind.Bait],
            picture.Rigs[0].Parts.Select(part => part.Kind).TakeLast(5));
    }

    // The ruler beside a leader says its unit where zero is, then what each mark with room for it counts, in the reader's unit.
    [Theory]
    [InlineData(false, "in 6 12 18 24 30")]
    [InlineData(true, "cm 20 40 60 76")]
    public async Task LayOut_Leader_NumbersTheMarksOfItsRuler(bool metric, string numbers)
    {
        var picture = await pictures.AskAsync("/rig plan species:walleye depth:24ft mood:negative", metric ? CrewUnits.Metric : CrewUnits.Customary);

        var ruler = Illustrator.LayOut(picture!).Texts.Where(text => text.Ink == Ink.Quiet).Select(text => text.Text);

        Assert.Equal(numbers.Split(' ').Order(StringComparer.Ordinal), ruler.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task AlternativeText_OfAPlan_NamesPartsAndTheWeakest()
    {
        var picture = await pictures.AskAsync("/rig plan species:walleye depth:24ft mood:negative");

        Assert.Contains("braid", picture!.AlternativeText, StringComparison.Ordinal);
        Assert.Contains("weakest", picture.AlternativeText, StringComparison.Ordinal);
        Assert.Contains("off bottom", picture.AlternativeText, StringComparison.Ordinal);
    }

    private static List<TextMark> Texts(Sheet sheet) => [.. sheet.Texts];
}
