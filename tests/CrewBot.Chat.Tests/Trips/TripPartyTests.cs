namespace CrewBot.Chat.Tests.Trips;

/// <summary>Parties that are out on the ice, and when they are back.</summary>
public sealed class TripPartyTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Out_OnAnotherDayThanTheTrips_NamesTheDayOfComingBack()
    {
        await _room.PlanTripAsync();
        Assert.Equal("Ana is on the ice, back by Sun 17 Jan 16:00", (await _room.SayAsync("trip out")).Headline);
        await _room.SayAsync("trip back");
        _room.Now += TimeSpan.FromHours(12);

        Assert.Equal("Ana is on the ice, back by 16:00", (await _room.SayAsync("trip out")).Headline);
    }

    [Theory]
    [InlineData("/trip join")]
    [InlineData("/trip join party:1")]
    public async Task Join_WithoutAnAnswer_IsIn(string line)
    {
        await _room.PlanTripAsync();

        Assert.Contains("In: 2 people: Ana, Bo.", (await _room.SayAsync(line, "Bo")).Lines);
        await _room.SayAsync("trip join answer:out", "Bo");
        Assert.Contains("In: 2 people: Ana, Bo.", (await _room.SayAsync(line, "Bo")).Lines);
    }

    [Fact]
    public async Task Back_WithLinesLeftDown_ClosesThem()
    {
        await _room.PlanTripAsync();
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("trip out");
        await _room.SayAsync("lines down lines:2");
        _room.Now += TimeSpan.FromHours(3);

        var reply = await _room.SayAsync("trip back");

        Assert.Contains("2 lines left down: closed now.", reply.Lines);
        Assert.Contains("no lines down", (await _room.SayAsync("lines up")).Problem, StringComparison.Ordinal);
    }

    // A trip is the current one until 12 hours after its return: whoever is out for longer must still be able to say that they are back.
    [Theory]
    [InlineData("trip back", "Ana")]
    [InlineData("trip back who:Ana", "Bo")]
    public async Task Back_LateIntoTheNextDay_EndsTheTripThatTheyAreOutOn(string line, string who)
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in", "Bo");
        _room.Now += TimeSpan.FromHours(11);
        await _room.SayAsync("trip out");
        _room.Now += TimeSpan.FromHours(8);
        Assert.Equal("Ana will be back by Mon 18 Jan 06:00", (await _room.SayAsync("trip late by:14h")).Headline);
        Assert.Contains(await LinesAsync(), shown => shown.Contains("Ana (back Mon 18 Jan 06:00)", StringComparison.Ordinal));
        _room.Now += TimeSpan.FromHours(14);

        Assert.Equal("Ana is back", (await _room.SayAsync(line, who)).Headline);
        Assert.Contains("No trip is planned", (await _room.SayAsync("trip back", "Bo")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Show_PartyPastItsTimeAndGrace_IsOverdueUntilItIsBack()
    {
        await _room.PlanTripAsync();
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("trip out back:13:00");
        _room.Now += TimeSpan.FromHours(5) + TimeSpan.FromMinutes(31);

        Assert.Contains(await LinesAsync(), line => line.Contains("OVERDUE", StringComparison.Ordinal));
        await _room.SayAsync("trip late by:+1h");
        Assert.DoesNotContain(await LinesAsync(), line => line.Contains("OVERDUE", StringComparison.Ordinal));
        Assert.Null((await _room.SayAsync("trip back")).Problem);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    private async Task<IReadOnlyList<string>> LinesAsync() => (await _room.SayAsync("trip show")).Lines;
}
