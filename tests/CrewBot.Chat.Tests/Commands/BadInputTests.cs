namespace CrewBot.Chat.Tests.Commands;

/// <summary>One short line each, nothing else.</summary>
public sealed class BadInputTests(ChatFixture chat)
{
    private const string Depths = "Give feet, metres or fathoms, such as 24ft.";

    [Theory]
    [InlineData("/rig plan species:waleye", "species: 'waleye' is not known. Nearest: walleye.")]
    [InlineData("/rig plan species:shark", "species: 'shark' is not known. Nearest: arctic char.")]
    [InlineData("/rig plan species:dragon", "species: 'dragon' is not known. Give a species, such as walleye, sauger. All 22 are offered as you type.")]
    [InlineData("/rig plan", "species is missing. Give a species, such as walleye, sauger.")]
    [InlineData("/rig plan species:walleye depth:0", "depth: '0' is outside 1 ft (0.3 m) to 492.1 ft (150 m). " + Depths)]
    [InlineData("/rig plan species:walleye depth:-3ft", "depth: '-3ft' is outside 1 ft (0.3 m) to 492.1 ft (150 m). " + Depths)]
    [InlineData("/rig plan species:walleye depth:500 m", "depth: '500 m' is outside 1 ft (0.3 m) to 492.1 ft (150 m). " + Depths)]
    [InlineData("/rig plan species:walleye depth:24 lb", "depth: '24 lb' is a weight, not a depth. " + Depths)]
    [InlineData("/rig plan species:walleye depth:NaN", "depth: can't read 'NaN'. " + Depths)]
    [InlineData("/rig plan species:walleye depth:1e999", "depth: can't read '1e999'. " + Depths)]
    [InlineData("/rig plan species:walleye depth:1,234", "depth: '1,234' could mean 1.234 or 1234: write the one you mean.")]
    [InlineData("/rig plan species:walleye mood:angry", "mood: can't read 'angry'. Give negative, neutral or positive.")]
    [InlineData("/rig plan species:walleye lines:2.5", "lines: can't read '2.5'. Give a whole number from 1 to 10.")]
    [InlineData("/rig plan species:walleye lines:11", "lines: '11' is not a whole number from 1 to 10.")]
    [InlineData("/rig plan walleye depth:24ft negative", "depth: '24ft negative' is two things. Name each: depth:24ft mood:negative")]
    [InlineData("/rig plan species:walleye depth:\"24ft\" negative", "depth: '\"24ft\" negative' is two things. Name each: depth:24ft mood:negative")]
    [InlineData("/rig drop 1/8oz 30ft", "weight: '1/8oz 30ft' is two things. Name each: weight:1/8oz depth:30ft")]
    [InlineData("/rig drop 1/8oz depth 30ft", "weight: '1/8oz depth 30ft' is two things. Name each: weight:1/8oz depth:30ft")]
    [InlineData("/rig broke join curl", "place: 'join curl' is two things. Name each: place:join end:curl")]
    [InlineData("/rig check braid 6lb double uni", "mainline: 'braid 6lb double uni' is two things. Name each: mainline:\"braid 6lb\" join:\"double uni\"")]
    [InlineData("/rig plan species:walleye without:gold", "without: 'gold' is not known. Give materials, baits or hooks to do without, such as lead or braid, trebles.")]
    [InlineData("/rig plan species:walleye lake:Loon Basin", "lake: 'Loon Basin' is no water of this crew. Its owner adds one with /crew setup water:\"name\".")]
    [InlineData("/rig plan species:walleye also-there:pike,,shark", "also-there: 'shark' is not known. Nearest: arctic char.")]
    [InlineData("/rig plan species:\u202Eeyellaw", "species: '?eyellaw' is not known. Give a species, such as walleye, sauger. All 22 are offered as you type.")]
    [InlineData("/rig plan species:🐟🐟", "species: '🐟🐟' is not known. Give a species, such as walleye, sauger. All 22 are offered as you type.")]
    [InlineData("/rig plan species:ولاي", "species: 'ولاي' is not known. Give a species, such as walleye, sauger. All 22 are offered as you type.")]
    [InlineData("🐟", "No species in that: '🐟' not understood. Give a species, such as walleye, sauger.")]
    [InlineData("hello there", "No species in that: 'hello', 'there' not understood. Give a species, such as walleye, sauger.")]
    [InlineData("/rig plan species:pike without:wire", "No rig: northern pike cut line and wire is ruled out; allow steel or titanium.")]
    [InlineData("/rig plan species:walleye depth:450ft current:1m/s", "No rig: no jigging spoon up to 2 oz (57 g) stays under the hole in 3.3 ft/s (1 m/s) of current.")]
    [InlineData("/rig plan species:walleye presentation:dead bait", "No rig: a dead bait does not suit neutral walleye.")]
    [InlineData("/rig drop weight:1/8oz", "depth is missing. Give feet, metres or fathoms, such as 24ft; or line-out in a current.")]
    [InlineData("/rig drop weight:1/8oz depth:30ft line-out:10m", "depth and line-out can't both be fixed: keep one.")]
    [InlineData("/rig drop weight:1/8oz line-out:10m", "line-out needs a current. Give current, a speed, such as 0.1m/s or 0.3ft/s.")]
    [InlineData("/rig drop weight:1/8oz material:lead density:11 depth:30ft", "material and density say the same thing: keep one.")]
    [InlineData("/rig drop weight:0.2g depth:100m line:\"braid 80lb\"", "It never gets to 328.1 ft (100 m): 0.0071 oz (0.2 g) of lead does not sink on that line.")]
    [InlineData("/rig check mainline:\"braid\"", "mainline: 'braid' has neither test nor diameter. Give material and test or diameter, such as braid 6lb or nylon 0.18mm.")]
    [InlineData("/rig check mainline:\"mono 6\"", "mainline: '6' has no unit. Give material and test or diameter, such as braid 6lb or nylon 0.18mm.")]
    [InlineData("/rig check mainline:\"braid 300lb\"", "mainline: '300lb' is outside 0.4 lb (0.2 kg) to 154.3 lb (70 kg). Give pounds or kilograms, such as 10lb.")]
    [InlineData("/rig check mainline:\"string 6lb\"", "mainline: 'string' is no line I know. There is nylon, fluorocarbon, braid, steel wire, titanium wire.")]
    [InlineData("/rig check mainline:\"braid 6lb\" lure:1/8oz", "lure: '1/8oz' names no lure. Give weight and kind, and the metal if you know it, such as 1/8oz tungsten jig.")]
    [InlineData("/rig broke place:lure end:straightened", "end: that is not seen there. At that place: curl, clean, frayed, flattened.")]
    [InlineData("/rig spread species:walleye holes:3 hit:4", "hit: there is no hole 4 of 3.")]
    [InlineData("/line compare line:\"braid 80lb\"", "with is missing: nylon of 80 lb (36.3 kg) is not in the table. Give material and test or diameter, such as braid 6lb or nylon 0.18mm.")]
    [InlineData("/line spool capacity:\"120m 0.22mm\" new:0.18", "new: '0.18' has no unit. Give millimetres or inches, such as 0.18mm.")]
    [InlineData("/line spool capacity:lots new:0.18mm", "capacity: can't read 'lots'. Give length and diameter as on the reel, such as 120m 0.22mm.")]
    [InlineData("/line spool capacity:\"120m 0.22mm\" new:0.18mm top:900m", "top: 984 yd (900 m) alone overfills it; 186 yd (170 m) is what fits.")]
    public async Task Say_BadInput_IsRefusedInOneShortLine(string line, string problem)
    {
        var reply = await chat.SayAsync(line);

        Assert.Equal(problem, reply.Problem);
        Assert.InRange(reply.Problem!.Length, 1, 200);
        Assert.Empty(reply.Headline);
        Assert.Empty(reply.Lines);
        Assert.Empty(reply.Figures);
        Assert.Empty(reply.Actions);
    }

    [Theory]
    [InlineData("10lb braid")]
    [InlineData("10 lb braid")]
    [InlineData("10-lb braid")]
    [InlineData("10 lb test braid")]
    [InlineData("10 pound-test braid")]
    [InlineData("10# braid")]
    public async Task Say_TestBeforeTheMaterial_IsReadAsAfterIt(string line)
    {
        var before = await chat.SayAsync($"/rig check mainline:\"{line}\" lure:\"1/8oz jigging spoon\"");
        var after = await chat.SayAsync("/rig check mainline:\"braid 10lb\" lure:\"1/8oz jigging spoon\"");

        Assert.Null(before.Problem);
        Assert.Equal(after.Lines, before.Lines);
    }

    // Nothing is guessed in silence: what was not understood is named even when the rest makes a plan.
    [Fact]
    public async Task Say_OneWordTooMany_AnswersAndNamesIt()
    {
        var reply = await chat.SayAsync("walleye 24ft yesterday");

        Assert.Null(reply.Problem);
        Assert.Contains("Not understood: 'yesterday'.", reply.Lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_DecimalComma_IsADecimal()
    {
        var reply = await chat.SayAsync("/rig plan species:walleye depth:7,3 m");

        Assert.Equal(7.3, reply.Figures.First(figure => figure.Key == "depth").Value, 1e-9);
    }

    [Theory]
    [InlineData("\u202E")]
    [InlineData("\u2066")]
    [InlineData("\u200F")]
    public async Task Say_DirectionMark_IsNeverRepeated(string mark)
    {
        var reply = await chat.SayAsync($"/rig plan species:{mark}x");

        Assert.DoesNotContain(mark, reply.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_TextWithoutEnd_IsRepeatedShortened()
    {
        var reply = await chat.SayAsync($"/rig plan species:{new string('x', 1400)}");

        Assert.StartsWith($"species: '{new string('x', 32)}…' is not known.", reply.Problem, StringComparison.Ordinal);
    }
}
