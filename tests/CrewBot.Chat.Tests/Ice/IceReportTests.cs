using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Ice;

public sealed class IceReportTests
{
    private const string Report = "/ice report water:\"Loon Basin\" spot:\"north bay\"";

    [Theory]
    [InlineData($"{Report} clear:5", "no unit")]
    [InlineData($"{Report} clear:4m", "outside")]
    [InlineData($"{Report} clear:-5in", "outside")]
    [InlineData($"{Report} clear:lots", "can't read")]
    [InlineData($"{Report} holes:\"4 5 5 3\"", "no unit")]
    [InlineData($"{Report} holes:\"4 5 x 3in\"", "can't read")]
    [InlineData($"{Report} clear:5in total:3in", "more than the total")]
    [InlineData($"{Report} clear:5in holes:\"4 5in\"", "two reports")]
    [InlineData($"{Report} clear:5in kind:white", "already")]
    [InlineData($"{Report} clear:5in when:\"tomorrow 14:00\"", "future")]
    [InlineData($"{Report} clear:5in when:\"2026-03-01 14:00\"", "older than this season")]
    [InlineData($"{Report} clear:5in author:Ben written:\"tomorrow 14:00\"", "future")]
    [InlineData($"{Report} clear:5in link:https://chat.example/1", "author")]
    [InlineData(Report, "Nothing was measured")]
    [InlineData($"{Report} hazard:dragons", "can't read")]
    [InlineData("/ice report water:\"Atlantis Pond\" clear:5in", "no water of this crew")]
    [InlineData("/ice report ask:\"why did the walleye cross the lake\"", "No water in that")]
    [InlineData("ice Loon Basin north bay 5 clear", "no unit")]
    [InlineData("/ice report", "water is missing")]
    [InlineData("/ice withdraw report:9 reason:oops", "no ice report #9")]
    [InlineData("/ice correct report:9 reason:oops clear:4in", "no ice report #9")]
    [InlineData("/ice follow water:\"Loon Basin\"", "no channel here")]
    [InlineData("/ice leave water:\"Loon Basin\"", "does not follow")]
    [InlineData("/ice share crew:tamarack", "own key")]
    [InlineData("/ice rules load:\"on foot\" thickness:5in reference:me", "never for less")]
    [InlineData("/ice carry water:\"Loon Basin\" machine:snowmobile", "weigh")]
    public async Task Say_WhatCannotStand_RefusesInOneLine(string line, string because)
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync(line);

        Assert.NotNull(reply.Problem);
        Assert.Contains(because, reply.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', reply.Problem);
        Assert.InRange(reply.Problem.Length, 1, 300);
    }

    [Fact]
    public async Task Say_AFourThousandCharacterPost_RefusesInOneLine()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"/ice report ask:\"Loon Basin {new string('x', 4000)}\"");

        Assert.Contains("characters", reply.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_Shorthand_ReadsWaterSpotLayersAndTime()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("ice Loon Basin north bay 5in clear 2in white 10 min ago");

        Assert.Null(reply.Problem);
        Assert.Equal("Ice report #1: Loon Basin, north bay", reply.Headline);
        Assert.Contains("5 in (12.7 cm) clear + 2 in (5 cm) white.", reply.Lines);
        // US Army TM 5-852-1: white ice counts by half, so 5 + 1 in.
        Assert.Contains("Counts as 6 in (15.2 cm) of clear ice (white or unnamed ice by half; US Army TM 5-852-1 and Minnesota DNR, undated).", reply.Lines);
        Assert.Contains("By Ana; 10 min ago.", reply.Lines);
    }

    // A spot is kept by its name, whatever marks it bears: another name would be another line of the board.
    [Fact]
    public async Task Say_ShorthandWithAMarkInTheSpot_KeepsIt()
    {
        await using var room = await RoomAsync();

        Assert.Equal("Ice report #1: Loon Basin, St. Elm bay", (await room.SayAsync("ice Loon Basin St. Elm bay 5in clear")).Headline);
    }

    [Theory]
    [InlineData("4 to 5 inches", "4 in (10.1 cm)")]
    [InlineData("4-5in clear", "4 in (10.1 cm) clear")]
    [InlineData("12,5cm clear", "4.9 in (12.5 cm) clear")]
    [InlineData("6 or 4.5 in", "4.5 in (11.4 cm)")]
    [InlineData("10–12cm", "3.9 in (10 cm)")]
    public async Task Say_ShorthandWithARange_TakesItsLowerEnd(string range, string shown)
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"ice Loon Basin north bay {range}");

        Assert.Null(reply.Problem);
        Assert.StartsWith(shown, reply.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Say_AWalkOut_IsKeptWholeAndCountsByItsLeastHole()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("/ice report water:\"Loon Basin\" holes:\"4 5 5 3in\" from:landing kind:clear");

        Assert.Contains(reply.Lines, line => line.StartsWith("4 holes from landing: 4 in", StringComparison.Ordinal));
        Assert.Contains("The least hole counts as 3 in (7.6 cm) of clear ice.", reply.Lines);
        Assert.Contains("Stay off, and tell others.", reply.Cautions);
    }

    [Theory]
    [InlineData("the narrows")]
    [InlineData("creek mouth")]
    public async Task Say_WhereIceIsNeverEven_ShowsNoNumberOnAnyPage(string spot)
    {
        await using var room = await RoomAsync();

        var filed = await room.SayAsync($"/ice report water:\"Loon Basin\" spot:\"{spot}\" clear:11in");
        var board = await room.SayAsync("/ice board water:\"Loon Basin\"");
        var corrected = await room.SayAsync("/ice correct report:1 reason:\"read again\" clear:10in");

        foreach (var reply in (Reply[])[filed, board, corrected])
        {
            Assert.Null(reply.Problem);
            Assert.Contains(reply.Lines, line => line.Contains("no number is given for a place like that", StringComparison.Ordinal));
            Assert.DoesNotContain(reply.Lines.Concat(reply.Struck), line => line.Contains(" cm", StringComparison.Ordinal));
            Assert.DoesNotContain(reply.Figures, figure => figure.Unit == "cm");
        }
    }

    [Fact]
    public async Task Board_NoWaterSaid_IsOfTheOnlyOneOrOfTodaysTrip()
    {
        await using var room = new CrewRoom();
        Assert.StartsWith("water is missing.", (await room.SayAsync("/ice board")).Problem, StringComparison.Ordinal);

        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        var only = await room.SayAsync("/ice board");
        Assert.Contains("Loon Basin", only.Headline, StringComparison.Ordinal);
        Assert.Contains("Assumed: Loon Basin, your crew's only water.", only.Lines);
        Assert.DoesNotContain(await BoardAsync(room), line => line.StartsWith("Assumed", StringComparison.Ordinal));

        await room.SayAsync("/crew setup water:\"Tamarack Bay\"");
        Assert.Equal("Which water? This crew has Loon Basin and Tamarack Bay. Give water:\"Loon Basin\".", (await room.SayAsync("/ice board")).Problem);

        await room.SayAsync("/trip plan water:\"Tamarack Bay\" meet:20:30");
        Assert.Null((await room.SayAsync("/trip join answer:in")).Problem);
        room.Now += TimeSpan.FromHours(1);
        Assert.Contains("Assumed: Tamarack Bay as on trip 1.", (await room.SayAsync("/ice board")).Lines);
    }

    [Fact]
    public async Task Say_NoWaterWhereOneMustBeSaid_NamesThoseOfTheCrew()
    {
        await using var room = await RoomAsync();

        Assert.Equal("water is missing. Give a water of the crew: Loon Basin.", (await room.SayAsync("/ice report clear:5in")).Problem);
        Assert.Equal("'Atlantis' is no water of this crew. It has Loon Basin. Its owner adds one with /crew setup water:\"name\".", (await room.SayAsync("/ice board water:Atlantis")).Problem?["water: ".Length..]);
    }

    [Fact]
    public async Task Say_APostThatIsPassedOn_KeepsWhatNobodySaidUnknown()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"{Report} total:8in author:Ben quote:\"8 inches out there\" written:\"2h ago\"");

        Assert.Contains(reply.Lines, line => line.Contains("nobody said when", StringComparison.Ordinal));
        Assert.Contains(reply.Lines, line => line.Contains("gives no figure: it lacks when", StringComparison.Ordinal));
    }

    [Fact]
    public async Task BadNews_UntilAStewardClosesItWithAMeasurement_Stands()
    {
        await using var room = await RoomAsync();
        await room.SayAsync($"{Report} hazard:\"broke through\"", "Ben", Role.Member);
        room.Now += TimeSpan.FromDays(2);
        await room.SayAsync($"{Report} clear:12in", "Ben", Role.Member);
        const string Ask = "/ice carry water:\"Loon Basin\" spot:\"north bay\" warmest:10F";

        var before = await room.SayAsync(Ask);
        Assert.Contains("stay off", before.Headline, StringComparison.Ordinal);
        Assert.DoesNotContain(before.Lines.Concat(before.Reasons), line => line.Contains(" cm", StringComparison.Ordinal));
        Assert.Contains("steward", (await room.SayAsync("/ice withdraw report:1 reason:oops", "Ben", Role.Member)).Problem, StringComparison.Ordinal);
        Assert.Contains("steward", (await room.SayAsync("/ice correct report:1 reason:oops hazard:crack", "Ben", Role.Member)).Problem, StringComparison.Ordinal);
        Assert.Contains("steward", (await room.SayAsync("/ice close report:1 measured:2 reason:\"solid all round\"", "Ben", Role.Member)).Problem, StringComparison.Ordinal);
        Assert.Contains("closes nothing", (await room.SayAsync("/ice close report:1 measured:1 reason:\"solid\"")).Problem, StringComparison.Ordinal);
        Assert.Null((await room.SayAsync("/ice close report:1 measured:2 reason:\"solid all round\"")).Problem);

        Assert.Contains("no clearance", (await room.SayAsync(Ask)).Headline, StringComparison.Ordinal);
        Assert.Contains(await BoardAsync(room), line => line.Contains("(bad news, closed): Broke through", StringComparison.Ordinal));

        room.Now += TimeSpan.FromDays(9);
        foreach (var inches in Enumerable.Range(11, 6))
        {
            await room.SayAsync($"{Report} clear:{inches}in");
        }

        Assert.Contains("Bad news closed this season: #1 north bay, 11 days ago.", await BoardAsync(room));
    }

    private static async Task<IReadOnlyList<string>> BoardAsync(CrewRoom room) => (await room.SayAsync("/ice board water:\"Loon Basin\"")).Lines;

    private static async Task<CrewRoom> RoomAsync()
    {
        var room = new CrewRoom();
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        return room;
    }
}
