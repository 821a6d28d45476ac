namespace CrewBot.Chat.Tests.Weather;

/// <summary>Times: US Naval Observatory, as quoted in public test data; 1 min either way.</summary>
public sealed class ShowLightTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Theory]
    [InlineData("at:\"59.9139, 10.7522\" date:2025-12-21", "sun 08:18 to 14:12", "Civil dawn 07:21, civil dusk 15:10.")]
    [InlineData("at:\"70, 0\" date:2025-11-24", "sun 11:14 to 12:19", null)]
    [InlineData("at:\"70, 0\" date:2025-12-21", "the sun does not rise", "Civil dawn 09:55, civil dusk 14:02.")]
    [InlineData("at:\"70, 0\" date:2025-06-21", "the sun does not set", "It never gets darker than civil twilight.")]
    [InlineData("at:\"85, 0\" date:2025-12-21", "the sun does not rise", "It is darker than civil twilight all day.")]
    public async Task Light_AnywhereOnAnyDay_IsTheAlmanacs(string asked, string sun, string? twilight)
    {
        var reply = await _room.SayAsync($"/weather light {asked}");

        Assert.EndsWith(sun, reply.Headline, StringComparison.Ordinal);
        Assert.True(twilight is null || reply.Lines[0] == twilight, reply.Lines[0]);
        Assert.Contains("Times by the clock of UTC.", reply.Lines);
        Assert.Contains(reply.Cautions, line => line.Contains("by sunset, not by dusk", StringComparison.Ordinal));
    }

    // Minneapolis, 21 Dec 2025: sun 07:48 to 16:34 (NOAA's method, checked against a second ephemeris program).
    [Fact]
    public async Task Light_AZone_GivesItsClock() => Assert.EndsWith(
        "Sun 21 Dec 2025: sun 07:48 to 16:34",
        (await _room.SayAsync("/weather light at:\"44.98, -93.27\" date:2025-12-21 zone:America/Chicago")).Headline,
        StringComparison.Ordinal);

    [Fact]
    public async Task Light_OneWaterWithAPlace_IsTakenAndNamed()
    {
        await _room.SayAsync("/crew setup water:\"Loon Basin\" at:\"49.88, -95.12\" zone:America/Winnipeg");
        await _room.SayAsync("/crew setup water:\"Tamarack Bay\"");

        var reply = await _room.SayAsync("/weather light");

        Assert.StartsWith("Loon Basin, Sat 16 Jan 2027: sun 08:", reply.Headline, StringComparison.Ordinal);
        Assert.Contains("Assumed: over Loon Basin, the one water whose place is known, today.", reply.Lines);

        // 14:00 in Winnipeg.
        Assert.Contains(reply.Lines, line => line.EndsWith("until sunset.", StringComparison.Ordinal));
        Assert.Contains("lies: give at:", (await _room.SayAsync("/weather light water:\"Tamarack Bay\"")).Problem, StringComparison.Ordinal);
        await _room.SayAsync("/crew setup water:\"Tamarack Bay\" at:\"50.1, -95.5\"");
        Assert.Equal("Which water? Loon Basin, Tamarack Bay: give it as water.", (await _room.SayAsync("/weather light")).Problem);
    }

    [Theory]
    [InlineData("/weather light", "Say where: at:\"49.9, -95.1\", or a water that the crew's owner has placed with /crew setup.")]
    [InlineData("/weather light at:\"95, 0\"", "at: can't read '95, 0'. Give latitude and longitude in degrees, such as 49.88, -95.12.")]
    [InlineData("/weather light at:\"50, 0\" date:3027-01-01", "date: can't read '3027-01-01'. Give a day from 1900 to 2100, such as tomorrow, saturday or 2027-01-16.")]
    public async Task Light_BadInput_IsRefusedInALine(string line, string problem)
    {
        await _room.SayAsync("/crew setup water:\"Loon Basin\"");

        Assert.Equal(problem, (await _room.SayAsync(line)).Problem);
    }

    [Fact]
    public async Task Light_InADirectMessage_NeedsAPlaceAlone()
    {
        Assert.Equal("Say where: at:\"49.9, -95.1\" takes latitude and longitude.", (await _room.SayAsync("/weather light", crew: null)).Problem);
        Assert.Null((await _room.SayAsync("/weather light at:\"49.9, -95.1\"", crew: null)).Problem);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
