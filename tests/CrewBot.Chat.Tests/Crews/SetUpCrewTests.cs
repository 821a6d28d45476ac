using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Crews;

public sealed class SetUpCrewTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task SetUp_Water_ShowsItsRulesWithTheirReferenceAndCheckForTheRest()
    {
        var reply = await _room.SayAsync("crew setup water:\"Loon Basin\" lines:2 lead:banned reference:\"booklet p. 12\"");

        Assert.Null(reply.Problem);
        Assert.Contains(
            "Loon Basin: lines 2 (booklet p. 12), lead banned (booklet p. 12); check your regulations on hooks, trebles, barbless, baits: not filled in.", reply.Lines);
    }

    [Fact]
    public async Task SetUp_RulesOfAWater_BindThePlannerOfThatCrewAlone()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\" lead:banned lines:1 reference:\"booklet p. 12\"");

        var plan = await _room.SayAsync("rig plan species:walleye lake:\"loon basin\"");

        Assert.Null(plan.Problem);
        Assert.DoesNotContain(" lead ", string.Join(' ', plan.Lines), StringComparison.Ordinal);
        Assert.Contains("is no water of this crew", (await _room.SayAsync("rig plan species:walleye lake:\"loon basin\"", crew: "other")).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("log walleye 22in St. Elm Lake", "water St. Elm Lake.")]
    [InlineData("log walleye 22in st. elm lake.", "water St. Elm Lake.")]
    [InlineData("walleye 24ft St. Elm Lake", "lake St. Elm Lake.")]
    public async Task Say_WaterWithAFullStopInItsName_IsHeard(string line, string heard)
    {
        await _room.SayAsync("crew setup water:\"St. Elm Lake\"");

        Assert.Contains(heard, (await _room.SayAsync(line)).Lines[^1], StringComparison.Ordinal);
    }

    // More lines than the crew filled in are neither planned for nor counted in silence.
    [Fact]
    public async Task Say_MoreLinesThanTheWaterAllows_SaysSo()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\" lines:2 reference:\"booklet p. 12\"");

        Assert.Contains("2 lines, since Loon Basin allows no more.", (await _room.SayAsync("rig pair walleye 24ft 4 lines loon basin")).Lines[^1], StringComparison.Ordinal);
        Assert.DoesNotContain("allows no more", (await _room.SayAsync("rig pair walleye 24ft 2 lines loon basin")).Lines[^1], StringComparison.Ordinal);
        Assert.Empty((await _room.SayAsync("lines down lines:2 water:\"Loon Basin\"")).Cautions);
        Assert.Equal(
            ["Check the lines that one angler may fish on Loon Basin: 2, as your crew filled in; you have 3 down."],
            (await _room.SayAsync("lines down lines:1 water:\"Loon Basin\" more:yes")).Cautions);
    }

    [Theory]
    [InlineData("49.88, -95.12")]
    [InlineData("49.88 -95.12")]
    [InlineData("49.88 N, 95.12 W")]
    [InlineData("49.88n 95.12w")]
    [InlineData("49.88° N, 95.12° W")]
    public async Task Say_WhereAWaterLies_IsReadAsMapsWriteIt(string at) => Assert.Contains(
        (await _room.SayAsync($"crew setup water:\"Loon Basin\" at:\"{at}\"")).Lines, line => line.EndsWith("not filled in. Lies at 49.88, -95.12.", StringComparison.Ordinal));

    [Theory]
    [InlineData("crew setup lines:2", "lines belongs to a water: name it with water, such as water:\"Loon Basin\".")]
    [InlineData("crew setup water Mill Pond", "If it is something else, name it: water:\"Mill Pond\"")]
    [InlineData("crew setup water:Loon lines:2", "A rule needs its reference, where the authority says so: add it, such as reference:\"booklet p. 12\".")]
    [InlineData("crew setup zone:Winnipeg", "'Winnipeg' is no time zone. Nearest: America/Winnipeg.")]
    [InlineData("crew setup zone:toronot", "Nearest: America/Toronto")]
    [InlineData("crew setup zone:America/Winipeg", "Nearest: America/Winnipeg.")]
    [InlineData("crew setup zone:central", "Nearest: US/Central, Canada/Central.")]
    [InlineData("crew setup zone:xyzzy", "Give a time zone, such as America/Winnipeg or UTC.")]
    [InlineData("crew setup person:Bo", "go together")]
    [InlineData("crew setup water:Loon at:95,200", "latitude and longitude")]
    [InlineData("crew setup water:Loon at:\"-49.88 N, 95.12 W\"", "latitude and longitude")]
    [InlineData("crew setup water:Loon at:\"95.12 W, 49.88 N\"", "latitude and longitude")]
    public async Task SetUp_Incomplete_IsRefusedInALine(string line, string part) =>
        Assert.Contains(part, (await _room.SayAsync(line)).Problem, StringComparison.Ordinal);

    [Fact]
    public async Task SetUp_ByAMember_IsRefusedUntilTheyAreGivenTheRole()
    {
        Assert.Contains("owner", (await _room.SayAsync("crew setup units:metric", "Bo", Role.Member)).Problem, StringComparison.Ordinal);
        await _room.SayAsync("log perch 9in", "Bo", Role.Member);
        await _room.SayAsync("crew setup person:Bo role:owner");
        Assert.Null((await _room.SayAsync("crew setup units:metric", "Bo", Role.Member)).Problem);
    }

    [Fact]
    public async Task SetUp_Units_HoldForTheCrewAndOnesOwnComeFirst()
    {
        await _room.SayAsync("crew setup units:metric");
        await _room.SayAsync("crew me units:customary", "Bo");

        Assert.StartsWith("Walleye, 57.2 cm (22.5 in)", (await _room.SayAsync("log walleye 22.5in")).Headline, StringComparison.Ordinal);
        Assert.StartsWith("Walleye, 22.5 in (57.2 cm)", (await _room.SayAsync("log walleye 22.5in", "Bo")).Headline, StringComparison.Ordinal);
        Assert.StartsWith("Walleye, 57 cm", (await _room.SayAsync("catch log species:walleye length:57")).Headline, StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
