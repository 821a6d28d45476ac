using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Catches;

public sealed class KeepingCheckTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Log_UnderTheMinimum_SaysWhatToCheckAndWhereItStands()
    {
        await SetUpAsync("minimum:15in reference:\"booklet p. 12\"");

        var reply = await _room.SayAsync("catch log species:walleye length:\"14 1/4in\" water:\"Loon Basin\" fate:kept");

        Assert.Contains("Check the minimum for walleye on Loon Basin: 15 in (38.1 cm), booklet p. 12; 14.25 in (36.2 cm) is under it.", reply.Cautions);
        Assert.DoesNotContain(reply.Cautions.Concat(reply.Lines), line => line.Contains("legal", StringComparison.OrdinalIgnoreCase));
    }

    // Exact to the nanometre: a fish on the line is not under it, whatever the units of either.
    [Theory]
    [InlineData("15in", "38.1cm")]
    [InlineData("38.1cm", "15in")]
    [InlineData("15in", "15 1/16in")]
    public async Task Log_OnTheMinimumOrOverIt_ChecksNothing(string minimum, string length)
    {
        await SetUpAsync($"minimum:{minimum} reference:booklet");

        Assert.Empty((await _room.SayAsync($"catch log species:walleye length:\"{length}\" water:\"Loon Basin\" fate:kept")).Cautions);
    }

    [Fact]
    public async Task Log_OverTheMaximum_IsToCheck()
    {
        await SetUpAsync("maximum:20in reference:booklet");

        Assert.Contains(
            (await _room.SayAsync("catch log species:walleye length:20.25in water:\"Loon Basin\" fate:kept")).Cautions,
            caution => caution.Contains("20.25 in (51.4 cm) is over it", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_Released_IsNoMatterOfSize()
    {
        await SetUpAsync("minimum:15in limit:1 reference:booklet");

        var reply = await _room.SayAsync("catch log species:walleye length:10in water:\"Loon Basin\" fate:released");

        Assert.DoesNotContain(reply.Cautions, caution => caution.StartsWith("Check", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_KeptFishOfTheDay_CountTowardTheLimitOfTheirSpeciesAndWater()
    {
        await SetUpAsync("limit:2 reference:\"booklet p. 13\"");
        await KeepAsync("walleye length:16in when:\"yesterday 16:00\"");
        await KeepAsync("perch length:9in");
        var first = await KeepAsync("walleye length:16in");
        await KeepAsync("walleye length:17in", "Bo");
        var second = await KeepAsync("walleye length:18in");
        var third = await KeepAsync("walleye length:19in");

        Assert.Contains("Kept today: 1 of 2 walleye (booklet p. 13).", first.Lines);
        Assert.Contains("Kept today: 2 of 2 walleye (booklet p. 13).", second.Lines);
        Assert.Contains("Check the limit for walleye on Loon Basin: 2 a day, booklet p. 13; this is number 3 today.", third.Cautions);
    }

    [Fact]
    public async Task Log_KeptWhereNobodyReadTheRules_StaysCheck()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");

        Assert.Contains("Check sizes and limits for walleye: nobody has filled them in for Loon Basin.", (await KeepAsync("walleye length:16in")).Cautions);
    }

    [Fact]
    public async Task SetUp_SizesAndLimits_AreShownWithTheirReferenceAndCanBeForgotten()
    {
        await SetUpAsync("minimum:15in reference:\"booklet p. 12\"");
        var shown = await SetUpAsync("limit:6 reference:\"booklet p. 13\"");
        var forgotten = await SetUpAsync("forget:limit");

        Assert.Contains("Walleye: minimum 15 in (booklet p. 12), maximum: check, limit 6 a day (booklet p. 13).", shown.Lines);
        Assert.Contains("Walleye: minimum 15 in (booklet p. 12), maximum: check, limit: check.", forgotten.Lines);
    }

    [Theory]
    [InlineData("crew setup water:Loon minimum:15in reference:x", "belongs to a fish")]
    [InlineData("crew setup water:Loon species:walleye minimum:15in", "A rule needs its reference")]
    [InlineData("crew setup species:walleye limit:6 reference:x", "belongs to a water")]
    [InlineData("crew setup water:Loon forget:limit", "name the fish with species")]
    public async Task SetUp_IncompleteSizeOrLimit_IsRefusedInALine(string line, string part) =>
        Assert.Contains(part, (await _room.SayAsync(line)).Problem, StringComparison.Ordinal);

    [Fact]
    public async Task Spot_OfTheWater_IsKeptAndLeftBehindWithIt()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\" spot:\"North hump\"");
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");

        var logged = await _room.SayAsync("catch log species:walleye water:\"Loon Basin\" spot:\"north hump\"");
        var unknown = await _room.SayAsync("catch log species:perch water:\"Loon Basin\" spot:\"north hmp\"");
        var nowhere = await _room.SayAsync("catch log species:perch spot:hump", "Bo");
        await _room.SayAsync("catch edit catch:1 water:\"Tamarack Bay\"");
        var exported = System.Text.Encoding.UTF8.GetString((await _room.SayAsync("catch export")).Files.Single().Content.Span);

        Assert.StartsWith("Loon Basin, North hump, ", logged.Lines[0], StringComparison.Ordinal);
        Assert.Contains("'north hmp' is no spot of Loon Basin. Nearest: North hump.", unknown.Problem, StringComparison.Ordinal);
        Assert.Contains("name that too", nowhere.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain("hump", exported, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Spot_AskedForOutsideTheCrew_IsNotShown()
    {
        Assert.All(
            _room.Catalog.Commands.Where(info => info.Options.Any(option => option.Name == "spot")),
            info => Assert.False(info.NeedsNoCrew, info.Path));
        await _room.SayAsync("crew setup water:\"Loon Basin\" spot:\"North hump\"");

        foreach (var info in _room.Catalog.Commands.Where(info => info.Family is "crew" or "catch"))
        {
            Assert.Matches("works inside a crew's own chat|needs a crew", (await _room.SayAsync(info.Example, crew: null)).Problem);
        }
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private Task<Reply> SetUpAsync(string rules) => _room.SayAsync($"crew setup water:\"Loon Basin\" species:walleye {rules}");

    private Task<Reply> KeepAsync(string fish, string member = "Ana") => _room.SayAsync($"catch log water:\"Loon Basin\" fate:kept species:{fish}", member);
}
