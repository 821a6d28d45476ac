using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Rigs;

/// <summary>A plan asked for in plain words.</summary>
public sealed class RigShorthandTests(ChatFixture chat)
{
    [Theory]
    [InlineData("walleye 24ft negative in the open -12C", "Heard: species walleye, depth 24ft, mood negative, place in the open, air -12C.")]
    [InlineData("WALLEYE 24' NEGATIVE", "Heard: species walleye, depth 24', mood negative.")]
    [InlineData("negative walleye, 24 feet deep", "Heard: mood negative, species walleye, depth 24 feet.")]
    [InlineData("lakers 60 ft hot", "Heard: species lake trout, depth 60 ft, mood hot.")]
    [InlineData("walleye 24ft in the hub", "Heard: species walleye, depth 24ft, place hub.")]
    [InlineData("eelpout in a shack", "Heard: species burbot, place shack.")]
    [InlineData("perch 20ft with maggots", "Heard: species yellow perch, depth 20ft, bait maggots.")]
    [InlineData("big pike dead bait", "Heard: size big, species northern pike, presentation dead bait.")]
    [InlineData("walleye 10in hole 24ft", "Heard: species walleye, hole 10in, depth 24ft.")]
    [InlineData("walleye 34F water 10F air", "Heard: species walleye, water 34F, air 10F.")]
    [InlineData("walleye water 34F air 10F", "Heard: species walleye, water 34F, air 10F.")]
    [InlineData("walleye current 0.1m/s hole 10in", "Heard: species walleye, current 0.1m/s, hole 10in.")]
    [InlineData("walleye 20ft 0.1m/s current 2 lines", "Heard: species walleye, depth 20ft, current 0.1m/s, lines 2.")]
    [InlineData("walleye no lead without braid", "Heard: species walleye, without lead, braid.")]
    [InlineData("walleye 20ft don’t have minnows", "Heard: species walleye, depth 20ft, without minnow. Assumed")]
    [InlineData("walleye 20ft out of lead", "Heard: species walleye, depth 20ft, without lead. Assumed")]
    [InlineData("walleye pike around perch too", "Heard: species walleye, also-there northern pike, yellow perch.")]
    [InlineData("perch 12ft won't bite", "Heard: species yellow perch, depth 12ft, mood won't bite.")]
    [InlineData("perch 12ft won’t bite", "Heard: species yellow perch, depth 12ft, mood won't bite.")]
    [InlineData("perch aint biting 12ft", "Heard: species yellow perch, mood ain't biting, depth 12ft.")]
    [InlineData("walleye stopped biting 20ft", "Heard: species walleye, mood stopped biting, depth 20ft.")]
    [InlineData("walleye 20ft not very active", "Heard: species walleye, depth 20ft, mood not very active.")]
    [InlineData("wallye 24ft negitive", "Heard: species walleye, depth 24ft, mood negative.")]
    [InlineData("northen pike 10ft", "Heard: species northern pike, depth 10ft.")]
    [InlineData("2 lines walleye 18fow", "Heard: lines 2, species walleye, depth 18fow.")]
    [InlineData("gills 8 fow finicky", "Heard: species bluegill, depth 8 fow, mood finicky.")]
    [InlineData("walleye 18-22 feet", "Heard: species walleye, depth 22 feet.")]
    [InlineData("walleye 22 to 18 ft", "Heard: species walleye, depth 22 ft.")]
    [InlineData("pike 10 ft herring", "Heard: species northern pike, depth 10 ft, bait whole dead fish.")]
    [InlineData("herring 40ft", "Heard: species cisco, depth 40ft.")]
    [InlineData("brookie 6ft minnow", "Heard: species brook trout, depth 6ft, bait live minnow.")]
    [InlineData("walleye 24ft dead sticking", "Heard: species walleye, depth 24ft, presentation set bait.")]
    [InlineData("walleye 24ft tip-up", "Heard: species walleye, depth 24ft, presentation tip-up.")]
    [InlineData("tip ups for perch 18ft", "Heard: presentation tip-up, species yellow perch, depth 18ft.")]
    [InlineData("pike 10ft tipup", "Heard: species northern pike, depth 10ft, presentation dead bait.")]
    [InlineData("walleye 24ft at dusk", "Heard: species walleye, depth 24ft. Assumed")]
    [InlineData("burbot 30-ft after dark tonight", "Heard: species burbot, depth 30-ft. Assumed")]
    [InlineData("zander 6m träge", "Heard: species zander, depth 6m, mood träge.")]
    [InlineData("brochet 3m", "Heard: species northern pike, depth 3m.")]
    [InlineData("rig walleye 20ft", "Heard: species walleye, depth 20ft.")]
    [InlineData("walleye 24ft two lines.", "Heard: species walleye, depth 24ft, lines 2.")]
    [InlineData("perch 32ft. won't commit", "Heard: species yellow perch, depth 32ft, mood won't commit.")]
    [InlineData("walleye 20ft lead free", "Heard: species walleye, depth 20ft, without lead.")]
    [InlineData("what line for pike", "Heard: species northern pike. Assumed")]
    [InlineData("what do i tie on for perches", "Heard: species yellow perch.")]
    [InlineData("zander 7,5 m", "Heard: species zander, depth 7,5 m. Assumed")]
    [InlineData("crappie 7 1/2 ft", "Heard: species black crappie, depth 7 1/2 ft. Assumed")]
    [InlineData("**walleye** `24ft` \"rattle bait\".", "Heard: species walleye, depth 24ft, presentation rattle bait. Assumed")]
    [InlineData("walleye 8” hole 18’", "Heard: species walleye, hole 8”, depth 18’.")]
    [InlineData("walleye 24ft hole 8", "Heard: species walleye, depth 24ft, hole 8in. Assumed")]
    [InlineData("perch depth 18", "Heard: species yellow perch, depth 18ft. Assumed")]
    [InlineData("walleye 24ft 20 below", "Heard: species walleye, depth 24ft, air -20F. Assumed")]
    [InlineData("walleye 24ft 20 degrees below zero", "Heard: species walleye, depth 24ft, air -20F. Assumed")]
    [InlineData("walleye 24ft 20C below", "Heard: species walleye, depth 24ft, air -20C. Assumed")]
    [InlineData("walleye 24ft - 20C", "Heard: species walleye, depth 24ft, air -20C. Assumed")]
    [InlineData("walleye - 24ft - minus 5", "Heard: species walleye, depth 24ft, air -5F. Assumed")]
    [InlineData("walleye 24ft -20", "Heard: species walleye, depth 24ft, air -20F. Assumed")]
    [InlineData("walleye 24ft -5 F", "Heard: species walleye, depth 24ft, air -5 F. Assumed")]
    public async Task Say_PlainWords_EchoesWhatWasHeard(string words, string echo)
    {
        var reply = await chat.SayAsync(words);

        Assert.Null(reply.Problem);
        Assert.StartsWith(echo, reply.Lines[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("walleye 24ft 10lb braid", "10lb braid", "10 lb (4.5 kg) braid")]
    [InlineData("walleye braid 8 lb 24ft", "braid 8 lb", "8 lb (3.6 kg) braid")]
    [InlineData("walleye 24ft 6-lb test mono on the reel", "6-lb test mono", "6 lb (2.7 kg) nylon")]
    public async Task Say_TheLineOnTheReel_IsPlannedFor(string words, string heard, string line)
    {
        var reply = await chat.SayAsync(words);

        Assert.Contains($"mainline {heard}", reply.Lines[^1], StringComparison.Ordinal);
        Assert.Contains(line, reply.Lines[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("walleye 24ft 30lb braid", " 10 lb (4.5 kg) braid would suit best.")]
    [InlineData("walleye 24ft 10lb braid", "of 10 lb (4.5 kg) fluorocarbon.")]
    public async Task Say_ALineThatServesButIsNotTheBest_IsToldWhatWouldBe(string words, string end) =>
        Assert.EndsWith(end, (await chat.SayAsync(words)).Lines[0], StringComparison.Ordinal);

    // One shorthand serves plan, pair and spread, which take different things.
    [Theory]
    [InlineData("/rig spread walleye 24ft 6 holes", "Heard: species walleye, depth 24ft, holes 6. Assumed")]
    [InlineData("/rig spread walleye tip-up 2 lines", "Heard: species walleye. Not understood: 'presentation tip-up', 'lines 2'.")]
    [InlineData("walleye 24ft 6 holes", "Heard: species walleye, depth 24ft. Not understood: 'holes 6'.")]
    public async Task Say_WhatAnotherCommandTakes_IsNamedAndNotRefused(string line, string echo)
    {
        var reply = await chat.SayAsync(line);

        Assert.Null(reply.Problem);
        Assert.StartsWith(echo, reply.Lines[^1], StringComparison.Ordinal);
    }

    // "20 below" is said in the unit of whoever says it.
    [Fact]
    public async Task Say_BelowZeroByAMetricCaller_IsCelsius()
    {
        var reply = await chat.SayAsync("walleye 7m 20 below", CrewUnits.Metric);

        Assert.StartsWith("Heard: species walleye, depth 7m, air -20C.", reply.Lines[^1], StringComparison.Ordinal);
        Assert.Contains(reply.Cautions, caution => caution.Contains("At -20 °C (-4 °F) wet braid", StringComparison.Ordinal));
    }

    // The one number that nothing else explains is the depth, in the unit of whoever says it.
    [Theory]
    [InlineData("perch 18", CrewUnits.Customary, "Yellow perch, neutral, 18 ft (5.5 m)", "Heard: species yellow perch, depth 18ft. Assumed: neutral")]
    [InlineData("18 down for perch, slow", CrewUnits.Customary, "Yellow perch, negative, 18 ft (5.5 m)", "Heard: species yellow perch, mood slow, depth 18ft. Assumed: typical")]
    [InlineData("perch 5,5", CrewUnits.Metric, "Yellow perch, neutral, 5.5 m (18 ft)", "Heard: species yellow perch, depth 5,5m. Assumed: neutral")]
    [InlineData("perch 18 hole 10 -5", CrewUnits.Customary, "Yellow perch, neutral, 18 ft (5.5 m)", "Heard: species yellow perch, hole 10in, air -5F, depth 18ft. Assumed: neutral")]
    public async Task Say_ALoneNumber_IsTheDepth(string words, CrewUnits units, string headline, string echo)
    {
        var reply = await chat.SayAsync(words, units);

        Assert.StartsWith(headline, reply.Headline, StringComparison.Ordinal);
        Assert.StartsWith(echo, reply.Lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_PlainWordsOrOptions_GetTheSameRig()
    {
        var words = await chat.SayAsync("walleye 24ft negative in the open -12C");
        var options = await chat.SayAsync("/rig plan species:walleye depth:24ft mood:negative place:open air:-12C");

        Assert.Equal(options.Headline, words.Headline);
        Assert.Equal(options.Lines.SkipLast(1), words.Lines.SkipLast(1));
        Assert.Equal(options.Figures, words.Figures);
        Assert.Equal(options.Reasons, words.Reasons);
        Assert.Equal(options.Cautions, words.Cautions);
    }

    [Theory]
    [InlineData("walleye 24ft quickly", "'quickly'")]
    [InlineData("walleye 24ft 3lb", "'3lb'")]
    [InlineData("walleye 24 30", "'24' (no unit), '30' (no unit).")]
    [InlineData("walleye 24 depth:30ft", "'24' (no unit).")]
    [InlineData("walleye 7 pm", "'7' (no unit), 'pm'.")]
    [InlineData("walleye size 6", "'size', '6' (no unit).")]
    [InlineData("walleye 5 fish", "'5' (no unit).")]
    [InlineData("walleye 1/8", "'1/8' (no unit).")]
    [InlineData("walleye 24ft 10-lb fluoro leader", "'10-lb fluoro leader'.")]
    [InlineData("walleye 24 ft 5 fish", "'5'")]
    [InlineData("perch 18ft 6in of ice", "'6in', 'ice'")]
    [InlineData("walleye 40F", "'40F'")]
    [InlineData("caught a 24 inch pike", "'caught', '24 inch'")]
    [InlineData("walleye -5f wind 10mph", "'wind', '10mph'")]
    [InlineData("walleye murky feeling", "'murky', 'feeling'")]
    [InlineData("walleye over rough ground", "'over', 'rough', 'ground'")]
    public async Task Say_WordsWithoutAPlace_AreNamedAndNotGuessed(string words, string named)
    {
        var reply = await chat.SayAsync(words);

        Assert.Null(reply.Problem);
        Assert.Contains($"Not understood: {named}", reply.Lines[^1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("walleye 24ft 30ft", "depth is given twice, 24ft and 30ft: keep one.")]
    [InlineData("walleye perch", "species is given twice, walleye and yellow perch: keep one.")]
    [InlineData("walleye 20ft 24ft 30ft", "depth is given 3 times, 20ft, 24ft and 30ft: keep one.")]
    [InlineData("walleye 24ft depth:30ft", "depth is given twice: keep one.")]
    public async Task Say_SaidTwice_AsksForOne(string words, string problem) =>
        Assert.Equal(problem, (await chat.SayAsync(words)).Problem);

    [Theory]
    [InlineData("trout 12ft", "'trout' may be lake trout, brook trout, rainbow trout, brown trout, splake. Say which.")]
    [InlineData("white bass 20ft", "'white' may be white crappie, lake whitefish. Say which.")]
    [InlineData("pirch 20ft", "'pirch' may be yellow perch. Send it again with that.")]
    [InlineData("wal 20ft", "'wal' may be walleye. Send it again with that.")]
    public async Task Say_PartOrSlipOfNames_AsksWhich(string words, string may) =>
        Assert.Equal($"No species in that: {may}", (await chat.SayAsync(words)).Problem);

    [Theory]
    [InlineData("/rig spread perch 8 holes", "8 holes for yellow perch, neutral")]
    [InlineData("/rig spread perch holes:1", "1 hole for yellow perch, neutral")]
    public async Task Spread_OverManyDepths_CautionsOfDepthOnce(string line, string headline)
    {
        var reply = await chat.SayAsync(line);

        Assert.Equal(headline, reply.Headline);
        Assert.Single(reply.Cautions, caution => caution.StartsWith("At 20 ft (6.1 m) and deeper, yellow perch", StringComparison.Ordinal));
    }

    // A fish that is measured is no water: what was asked for is a place in the log.
    [Theory]
    [InlineData("caught a 24 inch pike", "/catch log species:\"northern pike\" length:\"24 inch\"")]
    [InlineData("logg walleye 52cm", "/catch log species:walleye length:52cm")]
    public async Task Say_AFishWithItsLength_SaysHowToLogIt(string words, string command)
    {
        var reply = await chat.SayAsync(words);

        Assert.Contains($"Landed it? No fish is logged by this; to log it: {command}", reply.Lines);
        Assert.InRange(reply.Lines.Count, 1, 8);
        Assert.Contains(reply.Reasons, reason => reason.StartsWith("Or: ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Say_ADepthWithAnotherLength_IsAboutARig() =>
        Assert.DoesNotContain((await chat.SayAsync("walleye 24ft 10in of ice")).Lines, line => line.StartsWith("Landed", StringComparison.Ordinal));

    [Fact]
    public async Task Check_JoinWithoutALeader_SaysThatNothingIsJoined() => Assert.Equal(
        "Assumed: no leader, so nothing is joined, improved clinch at the lure.",
        (await chat.SayAsync("/rig check mainline:\"braid 6lb\" join:alberto hook:#6")).Lines[^1]);

    // An advice has its lengths in the reader's units.
    [Fact]
    public async Task Check_NoLeader_AdvisesOneInTheReadersUnits() => Assert.Contains(
        "1. No leader: walleye see braid straight to the lure. Tie in 61 cm (24 in) to 0.9 m (3 ft) of fluorocarbon.",
        (await chat.SayAsync("/rig check mainline:\"braid 6lb\" species:walleye", CrewUnits.Metric)).Lines);

    [Fact]
    public async Task Say_ShorthandInAnOption_IsReadTheSame()
    {
        var reply = await chat.CallAsync("rig plan", ("ask", "walleye 24ft"), ("mood", "negative"));

        Assert.Null(reply.Problem);
        Assert.StartsWith("Walleye, negative, 24 ft (7.3 m)", reply.Headline, StringComparison.Ordinal);
    }

    // A button carries on from what was understood, in options.
    [Fact]
    public async Task Say_ButtonsAfterPlainWords_HoldOptions()
    {
        var reply = await chat.SayAsync("walleye 24ft negative");

        Assert.Contains(reply.Actions, action => action.Command == "/rig plan species:walleye depth:24ft mood:neutral");
    }
}
