using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Catches;

public sealed class LogCatchTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Log_WeightWithoutALength_IsSaid() =>
        Assert.Contains("8 lb (3.63 kg) on the scale.", (await _room.SayAsync("log pike 8 lbs")).Lines);

    [Theory]
    [InlineData("log walleye 20in tip-up", "Heard: species walleye, length 20in, presentation tip-up.")]
    [InlineData("log pike 30in tip up", "Heard: species northern pike, length 30in, presentation dead bait.")]
    public async Task Log_ATipUp_IsWhatIsSetForThatFish(string line, string heard) =>
        Assert.Contains(heard, (await _room.SayAsync(line)).Lines);

    // As a phone sends it, and as people without decimal points write it.
    [Theory]
    [InlineData("log walleye 54,5 cm", "Heard: species walleye, length 54,5 cm.")]
    [InlineData("log walleye,22in,24ft", "Heard: species walleye, length 22in, depth 24ft.")]
    [InlineData("log walleye 8 lbs 3 oz kept", "Heard: species walleye, weight 8 lbs 3 oz, fate kept.")]
    [InlineData("log crappie 14 1/2\" 2lb6oz", "Heard: species black crappie, length 14 1/2\", weight 2lb6oz.")]
    [InlineData("Log pike 24½” released.", "Heard: species northern pike, length 24½”, fate released.")]
    [InlineData("log **walleye** - 22in. - 24ft - _released_", "Heard: species walleye, length 22in, depth 24ft, fate released.")]
    [InlineData("log wallaye 22in relased", "Heard: species walleye, length 22in, fate released.")]
    [InlineData("log walleye: 22in threw back", "Heard: species walleye, length 22in, fate threw back.")]
    [InlineData("log walleye about 22in down 24ft, let it go", "Heard: species walleye, length 22in, depth 24ft, fate let it go.")]
    [InlineData("log walleye 22in rod 2", "Heard: species walleye, length 22in, line 2.")]
    [InlineData("log walleye 22in an hour ago", "Heard: species walleye, length 22in, when an hour ago.")]
    [InlineData("log walleye 22in half an hour ago", "Heard: species walleye, length 22in, when half an hour ago.")]
    [InlineData("log walleye 22in yesterday at 4 pm", "Heard: species walleye, length 22in, when yesterday at 4 pm.")]
    [InlineData("log walleye 22in yesterday noon", "Heard: species walleye, length 22in, when yesterday noon.")]
    [InlineData("log walleye 22in at midnight", "Heard: species walleye, length 22in, when midnight.")]
    [InlineData("log walleye 22in 20 below", "Heard: species walleye, length 22in, air -20F.")]
    public async Task Log_AsItIsTyped_IsReadWhole(string line, string heard) =>
        Assert.Equal(heard, (await _room.SayAsync(line)).Lines[^1]);

    // A day's name in a water's name tells no time.
    [Fact]
    public async Task Log_OnAWaterNamedAfterADay_IsLoggedAsNow()
    {
        await _room.SayAsync("/crew setup water:\"Sunday Lake\"");

        Assert.Equal("Heard: species walleye, length 22in, water Sunday Lake.", (await _room.SayAsync("log walleye 22in sunday lake")).Lines[^1]);
    }

    // A scale's reading comes back as it was given; what is reckoned from a length has two figures.
    [Theory]
    [InlineData("log walleye 2 1/4 lb", "2.25 lb (1.02 kg) on the scale.")]
    [InlineData("log walleye 8 lb 3 oz", "8.19 lb (3.71 kg) on the scale.")]
    [InlineData("log perch 230g", "0.51 lb (0.23 kg) on the scale.")]
    public async Task Log_Weight_IsSaidAsTheScaleSaidIt(string line, string said) =>
        Assert.Contains(said, (await _room.SayAsync(line)).Lines);

    [Theory]
    [InlineData("catch edit #1 length:21in", "Corrected #1 walleye, 21 in (53.3 cm)")]
    [InlineData("catch void #1", "No longer counts: #1 walleye")]
    public async Task Change_EntryByTheNumberAsItIsShown_IsFound(string line, string headline)
    {
        await _room.SayAsync("log walleye 20in");

        Assert.StartsWith(headline, (await _room.SayAsync(line)).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("catch list 5", "whose: can't read '5'. Give mine or crew. If it is something else, name it: most:5")]
    [InlineData("lines down jigging spoon", "lines: can't read 'jigging spoon'. Give a whole number from 1 to 10. If it is something else, name it: presentation:\"jigging spoon\"")]
    [InlineData("lines down 2 jigging spoon", "lines: '2 jigging spoon' is two things. Name each: lines:2 presentation:\"jigging spoon\"")]
    [InlineData("lines down 30", "lines: '30' is not a whole number from 1 to 10.")]
    [InlineData("catch edit 1 length 21in", "catch: '1 length 21in' is two things. Name each: catch:1 length:21in")]
    [InlineData("catch void 0", "catch: '0' is not a number that /catch list shows, such as 12.")]
    public async Task Say_WithoutNames_SaysWhatToSend(string line, string problem) =>
        Assert.Equal(problem, (await _room.SayAsync(line)).Problem);

    [Theory]
    [InlineData("8 lb 3 oz", 131)]
    [InlineData("8lb3oz", 131)]
    [InlineData("8 pounds 3.5 ounces", 131.5)]
    public async Task Log_PoundsAndOunces_AreOneWeight(string weight, double ounces)
    {
        var reply = await _room.SayAsync($"/catch log species:walleye weight:\"{weight}\"");

        Assert.Equal(ounces * 28.349523125, Figure(reply, "catch.weight"), tolerance: 1e-6);
    }

    [Fact]
    public async Task Log_WordsInAnyOrder_AreReadAsOptions()
    {
        var reply = await _room.SayAsync("log walleye 22.5in 24ft jigging spoon released");

        Assert.Null(reply.Problem);
        Assert.Equal("Walleye, 22.5 in (57.2 cm), released: logged as #1 for Ana", reply.Headline);
        Assert.Equal(571.5, Figure(reply, "catch.length"));
        Assert.Equal(7.3152, Figure(reply, "catch.depth"), tolerance: 1e-9);
        Assert.Equal(Audience.Crew, reply.Audience);
        Assert.True(reply.Lines.Count <= 8);
    }

    // Standard weight of a walleye of 500 mm: 1348.11 g, by the coefficients of Murphy and others (1990), log10 W = -5.453 + 3.18 log10 L.
    [Fact]
    public async Task Log_LengthAlone_EstimatesTheStandardWeight()
    {
        var reply = await _room.SayAsync("log walleye 50cm");

        Assert.Equal(1348.11, Figure(reply, "catch.weight.estimate"), tolerance: 0.01);
        Assert.Contains(reply.Lines, line => line.StartsWith("About", StringComparison.Ordinal));
    }

    // A walleye of 508 mm and 1250 g has a relative weight of 88.16 by the same equation.
    [Fact]
    public async Task Log_LengthAndWeight_GivesTheRelativeWeight()
    {
        var reply = await _room.SayAsync("catch log species:walleye length:508mm weight:1250g");

        Assert.Equal(88.16, Figure(reply, "catch.relative-weight"), tolerance: 0.01);
    }

    // Customary rule L G²/800, inches and pounds, in the text of the Maryland fishing regulations: 29 by 15 in is 8.1563 lb.
    [Fact]
    public async Task Log_LengthAndGirth_EstimatesFromBoth()
    {
        var reply = await _room.SayAsync("catch log species:walleye length:29in girth:15in");

        Assert.Equal(8.1563 * 453.59237, Figure(reply, "catch.weight.estimate"), tolerance: 0.03);
    }

    [Fact]
    public async Task Log_SameRequestAgain_ChangesNothingAndAnswersTheSame()
    {
        var first = await _room.SayAsync("log walleye 20in", id: "again");
        var second = await _room.SayAsync("log walleye 20in", id: "again");

        Assert.Equal(ReplyJson.Write(first), ReplyJson.Write(second));
        Assert.Single((await _room.SayAsync("catch list")).Lines);
    }

    [Fact]
    public async Task Log_FirstAnswerOfMoreThanAWeekAgo_IsForgottenByTheFirstChangeOfADay()
    {
        var start = _room.Now;
        await LogAtAsync(TimeSpan.Zero, "first");
        await LogAtAsync(TimeSpan.FromHours(12), "second");
        await LogAtAsync(TimeSpan.FromDays(7.1), "third");
        await LogAtAsync(TimeSpan.FromDays(7.6), "fourth");
        await LogAtAsync(TimeSpan.FromDays(7.7), "second");
        Assert.Equal(4, (await _room.SayAsync("catch list")).Lines.Count);

        await LogAtAsync(TimeSpan.FromDays(7.7), "first");
        await LogAtAsync(TimeSpan.FromDays(8.2), "fifth");
        await LogAtAsync(TimeSpan.FromDays(8.3), "second");
        Assert.Equal(7, (await _room.SayAsync("catch list")).Lines.Count);

        async Task LogAtAsync(TimeSpan later, string id)
        {
            _room.Now = start + later;
            Assert.Null((await _room.SayAsync("log walleye 20in", id: id)).Problem);
        }
    }

    [Fact]
    public async Task Log_SameRequestManyTimesAtOnce_IsLoggedOnce()
    {
        var replies = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(() => _room.SayAsync("log walleye 20in", id: "burst"))));

        Assert.Single(replies.Select(ReplyJson.Write).Distinct());
        Assert.Single((await _room.SayAsync("catch list")).Lines);
    }

    [Theory]
    [InlineData("log perch 118in", "118 in (299.7 cm) is longer than any yellow perch one expects")]
    [InlineData("log walleye 20in 40lb", "does not fit a walleye of 20 in (50.8 cm)")]
    [InlineData("catch log species:walleye when:23:30", "23:30 is still to come: it is ")]
    [InlineData("catch log species:walleye length:-3in", "length")]
    [InlineData("log walleye 20in yesterday", "when: can't read 'yesterday'. Give 10 min ago, 14:20, yesterday 16:05")]
    [InlineData("log walleye 20in this morning", "when: can't read 'this morning'.")]
    [InlineData("log walleye last night 20in", "when: can't read 'last night'.")]
    [InlineData("log walleye 20in last night at 1am", "when: can't read 'last night at 1am'.")]
    [InlineData("log walleye 20in saturday 4 pm", "when: can't read 'saturday 4 pm'.")]
    [InlineData("log walleye 20in a couple of days ago", "when: can't read 'a couple of days ago'.")]
    [InlineData("log a walleye a while ago", "when: can't read 'a while ago'.")]
    [InlineData("catch log species:walleye water:\"Lune Basin\"", "'Lune Basin' is no water of this crew.")]
    [InlineData("catch log species:walley3", "'walley3' is not known. Nearest: walleye")]
    public async Task Log_DoubtfulOrWrong_IsRefusedInALineAndStoresNothing(string line, string part)
    {
        var reply = await _room.SayAsync(line);

        Assert.Contains(part, reply.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', reply.Problem!);
        Assert.NotNull((await _room.SayAsync("catch list")).Problem);
    }

    [Fact]
    public async Task Log_PartOfTheDayWithItsClock_IsWhenItWasCaught() =>
        Assert.Contains("when last night at 11pm", string.Join('\n', (await _room.SayAsync("log walleye 20in last night at 11pm")).Lines), StringComparison.Ordinal);

    [Fact]
    public async Task Log_DoubtfulButConfirmed_IsStored() =>
        Assert.Null((await _room.SayAsync("catch log species:walleye length:20in weight:40lb confirm:yes")).Problem);

    [Fact]
    public async Task Log_SameFishWithinAMinute_IsAskedAbout()
    {
        await _room.SayAsync("log walleye 20in");
        _room.Now += TimeSpan.FromSeconds(30);

        Assert.Contains("That looks like #1", (await _room.SayAsync("log walleye 20in")).Problem, StringComparison.Ordinal);
        _room.Now += TimeSpan.FromMinutes(1);
        Assert.Null((await _room.SayAsync("log walleye 20in")).Problem);
    }

    [Fact]
    public async Task Log_SecondFishOfTheDay_TakesOverAndNamesWhatWasSaidBefore()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\" also-called:\"the basin\"");
        await _room.SayAsync("log walleye 20in 24ft jigging spoon negative the basin");
        _room.Now += TimeSpan.FromMinutes(10);

        var reply = await _room.SayAsync("log perch 9in");

        Assert.Contains(reply.Lines, line => line.StartsWith("Loon Basin, 24 ft (7.3 m), jigging spoon, 20:10", StringComparison.Ordinal));
        Assert.Contains(reply.Lines, line => line.EndsWith("Assumed: Loon Basin, 24 ft (7.3 m), jigging spoon as at #1.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_ReleasedFromDeepWaterInFrost_CautionsForBoth()
    {
        var reply = await _room.SayAsync("log walleye 20in 33ft -15C released");

        Assert.Equal(2, reply.Cautions.Count);
        Assert.Empty((await _room.SayAsync("log walleye 21in 33ft -15C kept")).Cautions);
    }

    [Fact]
    public async Task Log_CrewsZone_DecidesTheClock()
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg");

        var reply = await _room.SayAsync("catch log species:walleye when:\"10 min ago\"");

        Assert.Contains(reply.Lines, line => line.Contains("13:50", StringComparison.Ordinal));
    }

    [Fact]
    public async Task EditAndVoid_OthersEntry_IsForAStewardAlone()
    {
        await _room.SayAsync("log walleye 20in");

        Assert.Contains("#1 is Ana's", (await _room.SayAsync("catch void catch:1", "Bo", Role.Member)).Problem, StringComparison.Ordinal);
        Assert.Null((await _room.SayAsync("catch edit catch:1 length:20.25in", "Bo", Role.Steward)).Problem);
        Assert.Null((await _room.SayAsync("catch void catch:1")).Problem);
        Assert.Contains("void", (await _room.SayAsync("catch edit catch:1 length:21in")).Problem, StringComparison.Ordinal);
        Assert.NotNull((await _room.SayAsync("catch list")).Problem);
    }

    [Fact]
    public async Task Void_EntryOfAnotherCrew_IsNotThere()
    {
        await _room.SayAsync("log walleye 20in");

        Assert.Contains("There is no #1", (await _room.SayAsync("catch void catch:1", crew: "other")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Leaders_EqualLengths_ShowBothAnglers()
    {
        await _room.SayAsync("log walleye 20in", "Ana");
        await _room.SayAsync("log walleye 20in", "Bo");

        var reply = await _room.SayAsync("catch leaders");

        Assert.Contains("Longest walleye: 20 in (50.8 cm), Ana (#1) and Bo (#2).", reply.Lines);
    }

    [Fact]
    public async Task LinesUp_TwoLinesForNinetyMinutes_AreThreeLineHours()
    {
        await _room.SayAsync("lines down lines:2");
        _room.Now += TimeSpan.FromMinutes(90);

        Assert.Equal(3, Figure(await _room.SayAsync("lines up"), "effort.line-hours"), tolerance: 1e-9);
        Assert.Contains("no lines down", (await _room.SayAsync("lines up")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task LinesUp_ForgottenOvernight_IsAskedForAndNotMadeUp()
    {
        await _room.SayAsync("lines down");
        _room.Now += TimeSpan.FromDays(1);

        Assert.Contains("give when they came up", (await _room.SayAsync("lines up")).Problem, StringComparison.Ordinal);
        Assert.Equal(2, Figure(await _room.SayAsync("lines up when:\"22 h ago\""), "effort.line-hours"), tolerance: 1e-9);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private static double Figure(Reply reply, string key) => reply.Figures.Single(figure => figure.Key == key).Value;
}
