namespace CrewBot.Chat.Tests.Ice;

public sealed class IceShorthandTests
{
    [Theory]
    [InlineData("hump 5 1/2 in clear", "5.5 in (13.9 cm) clear.")]
    [InlineData("hump 12,5cm clear", "4.9 in (12.5 cm) clear.")]
    [InlineData("hump clear 5in white 2in", "5 in (12.7 cm) clear + 2 in (5 cm) white.")]
    [InlineData("hump 5in of clear ice and 2 in of white ice on top", "5 in (12.7 cm) clear + 2 in (5 cm) white.")]
    [InlineData("hump 5in clear 2in snow ice", "5 in (12.7 cm) clear + 2 in (5 cm) white.")]
    [InlineData("hump slush, 4in clear", "Slush; 4 in (10.1 cm) clear.")]
    [InlineData("hump slush 4in clear", "Slush; 4 in (10.1 cm) clear.")]
    [InlineData("hump 5in, snow 2in", "5 in (12.7 cm), kind not said.")]
    [InlineData("hump 8in 9in 7in", "3 holes: 8 in (20.3 cm), kind not said · 9 in (22.8 cm), kind not said · 7 in (17.7 cm), kind not said.")]
    [InlineData("hump 8,9,7in", "3 holes: 8 in (20.3 cm), kind not said · 9 in (22.8 cm), kind not said · 7 in (17.7 cm), kind not said.")]
    [InlineData("hump 3 holes 8 9 7 in", "3 holes: 8 in (20.3 cm), kind not said · 9 in (22.8 cm), kind not said · 7 in (17.7 cm), kind not said.")]
    [InlineData("hump my sled broke thru", "Broke through.")]
    [InlineData("hump no ice", "Open water.")]
    public async Task Say_HoweverLayersAreSaid_ReadsThem(string words, string found)
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"ice Loon Basin {words}");

        Assert.Null(reply.Problem);
        Assert.Equal(found, reply.Lines[0]);
    }

    // Layers that may be of either thickness, and times that can't be read, are asked for and never guessed.
    [Theory]
    [InlineData("hump 5in snow 2in", "snow is given twice, 5in and 2in: keep one.")]
    [InlineData("hump 7in, 3 of it white", "'7in 3' has no unit")]
    [InlineData("hump 5in clear last night", "when: can't read 'last night'. Give 10 min ago")]
    [InlineData("hump 5in clear this morning", "when: can't read 'this morning'")]
    [InlineData("hump 5in clear yesterday", "when: can't read 'yesterday'")]
    [InlineData("hump 5in clear saturday 7am", "when: can't read 'saturday 7am'")]
    [InlineData("hump 5in clear 25:10", "when: can't read '25:10'")]
    [InlineData("hump 5in clear 2 weeks ago", "when: can't read '2 weeks ago'")]
    [InlineData("hump 5in clear a couple of hours ago", "when: can't read 'a couple of hours ago'")]
    public async Task Say_WhatMayBeMeantTwoWays_Asks(string words, string because)
    {
        await using var room = await RoomAsync();

        Assert.Contains(because, (await room.SayAsync($"ice Loon Basin {words}")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("north bay about 5 inches", "north bay")]
    [InlineData("north bay guessing 6in maybe", "north bay")]
    [InlineData("north bay ~5in", "north bay")]
    [InlineData("north bay 5in not measured", "north bay")]
    public async Task Say_AboutSoMuch_IsNoMeasurement(string words, string spot)
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"ice Loon Basin {words}");

        Assert.Equal($"Ice report #1: Loon Basin, {spot}", reply.Headline);
        Assert.Contains("#1 is shown but gives no figure: it was guessed or heard. /ice report files what you measure.", reply.Lines);
    }

    [Theory]
    [InlineData("5in clear at the landing", "the landing", "just now")]
    [InlineData("5in clear an hour ago by the dock", "the dock", "60 min ago")]
    [InlineData("hump 5in clear half an hour ago", "hump", "30 min ago")]
    [InlineData("hump 5in clear at 19:30", "hump", "30 min ago")]
    [InlineData("hump 5in clear at noon", "hump", "8 h ago")]
    [InlineData("mouth of the bay 5in clear", "mouth of the bay", "just now")]
    public async Task Say_WhereAndWhenInAnyOrder_AreHeard(string words, string spot, string age)
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync($"ice Loon Basin {words}");

        Assert.Equal($"Ice report #1: Loon Basin, {spot}", reply.Headline);
        Assert.Contains($"By Ana; {age}.", reply.Lines);
    }

    [Fact]
    public async Task Say_NoCracks_FilesNone()
    {
        await using var room = await RoomAsync();

        var reply = await room.SayAsync("ice Loon Basin hump 5in clear no cracks no slush");

        Assert.Equal("5 in (12.7 cm) clear.", reply.Lines[0]);
        Assert.DoesNotContain("Stay off, and tell others.", reply.Cautions);
        Assert.Contains(reply.Lines, line => line.EndsWith("Not understood: 'no cracks', 'no slush'.", StringComparison.Ordinal));
    }

    private static async Task<CrewRoom> RoomAsync()
    {
        var room = new CrewRoom();
        await room.SayAsync("/crew setup water:\"Loon Basin\"");
        return room;
    }
}
