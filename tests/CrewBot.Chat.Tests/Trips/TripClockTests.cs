namespace CrewBot.Chat.Tests.Trips;

/// <summary>By which day and clock a trip's times are meant. The room's clock stands at Saturday 16 January 2027, 14:00 in Winnipeg.</summary>
public sealed class TripClockTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Out_ADayAheadWithoutATimeToBeBack_IsRefused()
    {
        await PlanAsync("monday 07:00");

        Assert.Equal(
            "Trip 1 meets Mon 18 Jan 07:00. If you go onto the ice now, say when you are back: /trip out trip:1 back:16:00", (await _room.SayAsync("/trip out")).Problem);
        Assert.Equal("Ana is on the ice, back by 16:00", (await _room.SayAsync("/trip out trip:1 back:16:00")).Headline);
    }

    [Fact]
    public async Task Show_BackOnAnotherDay_NamesTheDay()
    {
        await PlanAsync("15:00");
        _room.Now += TimeSpan.FromHours(1);
        await _room.SayAsync("/trip out back:\"sunday 17:00\"");

        Assert.Contains("On the ice: Ana (back Sun 17 Jan 17:00).", (await _room.SayAsync("/trip show")).Lines);
        Assert.Equal("Ana will be back by Sun 17 Jan 18:00", (await _room.SayAsync("/trip late by:+1h")).Headline);
    }

    [Fact]
    public async Task Plan_WithoutATimeZone_SaysByWhichClock()
    {
        await _room.SayAsync("/crew setup water:\"Loon Basin\"");

        var plan = await _room.SayAsync("/trip plan water:\"Loon Basin\" meet:\"21:00\"");
        var outside = await _room.SayAsync("/trip out");

        const string Clock = "Times are UTC's: the crew has set no time zone. Its owner does with /crew setup zone:America/Winnipeg";
        Assert.Contains(Clock, plan.Lines);
        Assert.Contains(Clock, outside.Lines);
    }

    [Fact]
    public async Task Cancel_Answer_AsksForNoGearAnyMore()
    {
        await PlanAsync("monday 07:00");

        var reply = await _room.SayAsync("/trip cancel");

        Assert.EndsWith("Cancelled", reply.Headline, StringComparison.Ordinal);
        Assert.Equal(["In: 1 person: Ana."], reply.Lines);
    }

    [Fact]
    public async Task Say_NotOnTheTrip_NamesTheTripThatIsMeant()
    {
        await PlanAsync("monday 07:00");

        Assert.Equal(
            "You are not on trip 1 (Loon Basin, Mon 18 Jan 07:00): /trip join trip:1 answer:in first.", (await _room.SayAsync("/trip out", "Bo")).Problem);
    }

    [Theory]
    [InlineData("07:00 -20C 15km/h", "After 07:00 nothing was given: it is taken to be as then.")]
    [InlineData("09:00 -20C 15km/h, 16:00 -10C 15km/h", "Before 09:00 nothing was given: it is taken to be as then.")]
    [InlineData("07:00 -20C 15km/h, 16:00 -10C 15km/h", null)]
    public async Task Day_ForecastOfAPartOfIt_SaysWhatIsTakenFromTheNearest(string forecast, string? line)
    {
        await PlanAsync("monday 07:00");

        var reply = await _room.SayAsync($"/trip day forecast:\"{forecast}\"");

        Assert.Equal(line, reply.Lines.SingleOrDefault(said => said.Contains("taken to be as then", StringComparison.Ordinal)));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task PlanAsync(string meet)
    {
        await _room.SayAsync("/crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        Assert.Null((await _room.SayAsync($"/trip plan water:\"Loon Basin\" meet:\"{meet}\"")).Problem);
    }
}
