namespace CrewBot.Chat.Tests.Catches;

public sealed class TakenOverTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Log_SameSpeciesSoon_TakesOverTheMoodToo()
    {
        await FirstAsync();
        Assert.Equal("Assumed: Loon Basin, 24 ft (7.3 m), jigging spoon, negative mood as at #1.", await AssumedAsync(TimeSpan.FromMinutes(119), "log walleye 21in"));
    }

    [Theory]
    [InlineData(10, "log perch 9in")] // another species has a mood of its own
    [InlineData(121, "log walleye 21in")] // two hours on, so may the mood
    public async Task Log_AnotherSpeciesOrLater_LeavesTheMoodUnsaid(int minutes, string line)
    {
        await FirstAsync();
        Assert.Equal("Assumed: Loon Basin, 24 ft (7.3 m), jigging spoon as at #1.", await AssumedAsync(TimeSpan.FromMinutes(minutes), line));
    }

    [Fact]
    public async Task Log_LaterInTheDay_TakesOverTheWaterAlone()
    {
        await FirstAsync();
        Assert.Equal("Assumed: Loon Basin as at #1.", await AssumedAsync(TimeSpan.FromHours(5), "log walleye 21in"));
    }

    [Fact]
    public async Task Log_AnotherWater_TakesNothingOver()
    {
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");
        await FirstAsync();
        Assert.Null(await AssumedAsync(TimeSpan.FromMinutes(30), "catch log species:walleye water:\"Tamarack Bay\""));
    }

    [Fact]
    public async Task Log_LinesDown_NamesThemAsWhereItComesFrom()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("lines down presentation:\"dead bait\" water:\"Loon Basin\" lines:1");
        Assert.Equal("Assumed: Loon Basin, dead bait as your lines are down.", await AssumedAsync(TimeSpan.FromHours(6), "log pike 30in"));
    }

    [Fact]
    public async Task LinesDown_WhileLinesAreDown_IsAskedAbout()
    {
        Assert.Equal("2 lines down since 20:00", (await _room.SayAsync("lines down lines:2")).Headline);
        Assert.Equal(
            "You have 2 lines down since 20:00: take them up with /lines up, or add to them with more:yes.", (await _room.SayAsync("lines down")).Problem);
        Assert.Contains("You have 3 lines down in all.", (await _room.SayAsync("lines down more:yes")).Lines);
    }

    [Theory]
    [InlineData("log bluegill 8in 5ft 6in", "5ft 6in", 203.2)]
    [InlineData("log bluegill 5'6\" 8in", "5'6\"", 203.2)]
    [InlineData("log bluegill 5 ft 6 in", "5 ft 6 in", null)]
    [InlineData("log perch 9in 24ft 6in", "24ft 6in", 228.6)]
    [InlineData("log perch 24ft 9in", "24ft", 228.6)]
    public async Task Log_FeetAndInches_AreOneDepth(string line, string depth, double? millimetres)
    {
        var reply = await _room.SayAsync(line);

        Assert.Null(reply.Problem);
        Assert.Contains($"depth {depth}", reply.Lines[^1], StringComparison.Ordinal);
        Assert.Equal(millimetres, reply.Figures.FirstOrDefault(figure => figure.Key == "catch.length")?.Value);
    }

    [Theory]
    [InlineData("rig plan walleye 5ft 6in", "depth 5ft 6in")]
    [InlineData("rig plan walleye 5'6\"", "depth 5'6\"")]
    [InlineData("rig plan walleye 24ft 2 lines", "depth 24ft, lines 2")]
    [InlineData("rig plan walleye 24ft 8in hole", "depth 24ft, hole 8in")]
    public async Task Plan_FeetAndInches_AreOneDepth(string line, string heard) =>
        Assert.Contains(heard, (await _room.SayAsync(line)).Lines[^1], StringComparison.Ordinal);

    [Fact]
    public async Task Log_SameFishTwiceAfterALaterOne_IsStillAskedAbout()
    {
        await _room.SayAsync("log walleye 20in");
        await _room.SayAsync("catch log species:perch length:9in when:\"yesterday 10:00\"");

        Assert.Contains("That looks like #2", (await _room.SayAsync("catch log species:perch length:9in when:\"yesterday 10:00\"")).Problem, StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task FirstAsync()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        Assert.Null((await _room.SayAsync("catch log species:walleye length:20in water:\"Loon Basin\" depth:24ft presentation:\"jigging spoon\" mood:negative")).Problem);
    }

    private async Task<string?> AssumedAsync(TimeSpan later, string line)
    {
        _room.Now += later;
        var reply = await _room.SayAsync(line);
        Assert.Null(reply.Problem);
        return reply.Lines.FirstOrDefault(said => said.Contains("Assumed", StringComparison.Ordinal)) is { } said ? said[said.IndexOf("Assumed", StringComparison.Ordinal)..] : null;
    }
}
