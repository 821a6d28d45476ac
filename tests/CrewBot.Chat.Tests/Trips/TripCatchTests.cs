using System.Text;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>What a fish logged on a trip takes over from it, and the trip as a span of the boards.</summary>
public sealed class TripCatchTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Log_OnATrip_TakesItsWaterAndSaysSo()
    {
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");
        await _room.PlanTripAsync();
        await _room.SayAsync("log perch 9in water:\"Tamarack Bay\"");
        _room.Now += TimeSpan.FromHours(12);

        var reply = await _room.SayAsync("log walleye 20in");

        Assert.Contains(reply.Lines, line => line.Contains("Loon Basin as on trip 1", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Log_OnATripThatIsAfterAFish_TakesSpeciesAndDepthAndSaysSo()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" species:walleye depth:24ft");
        Assert.Contains("species is missing", (await _room.SayAsync("log 20in")).Problem, StringComparison.Ordinal);
        _room.Now += TimeSpan.FromHours(12);

        var reply = await _room.SayAsync("log 20in");

        Assert.Contains(reply.Lines, line => line.EndsWith("Assumed: walleye, Loon Basin, 24 ft (7.3 m) as on trip 1.", StringComparison.Ordinal));
        Assert.Contains("'blurry' not understood", (await _room.SayAsync("log blurry 21in")).Problem, StringComparison.Ordinal);
        Assert.Contains((await _room.SayAsync("log perch 9in 18ft")).Lines, line => line.EndsWith("Assumed: Loon Basin as on trip 1.", StringComparison.Ordinal));
        Assert.Contains((await _room.SayAsync("log 21in")).Lines, line => line.EndsWith("Assumed: walleye, Loon Basin as on trip 1, 18 ft (5.5 m) as at #2.", StringComparison.Ordinal));
    }

    // 19 ft are 5,791,200,000 nm; by way of a binary fraction of a metre it was one less, and the catch file said 18.99….
    [Theory]
    [InlineData("19ft", ",19,ft,")]
    [InlineData("7.3 m", ",7.3,m,")]
    public async Task Log_OnATripOfADepth_TakesItOverAsItWasWritten(string depth, string cells)
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" depth:\"{depth}\"");
        _room.Now += TimeSpan.FromHours(12);
        await _room.SayAsync("log walleye 20in");

        var file = Assert.Single((await _room.SayAsync("catch export")).Files);
        Assert.Contains(cells, Encoding.UTF8.GetString(file.Content.Span), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Log_OnATripByAnotherAngler_AsksForTheSpecies()
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");
        await _room.SayAsync("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" species:walleye");
        _room.Now += TimeSpan.FromHours(12);

        Assert.Contains("species is missing", (await _room.SayAsync("log 20in", "Bo")).Problem, StringComparison.Ordinal);
    }

    // Met at 07:00 UTC, the first was out at 06:30, the last back at 17:00: what was caught then on that water counts.
    [Fact]
    public async Task Leaders_OfATrip_CountFromTheFirstOutToTheLastBackOnItsWater()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("crew setup water:\"Tamarack Bay\"");
        await _room.SayAsync("trip join answer:in", "Bo");
        Assert.Contains("No trip has begun yet", (await _room.SayAsync("catch leaders span:trip")).Problem, StringComparison.Ordinal);
        var day = new DateTimeOffset(2027, 1, 17, 0, 0, 0, TimeSpan.Zero);
        foreach (var (hour, who, line) in ((double, string, string)[])
        [
            (6, "Ana", "catch log species:walleye length:30in water:\"Loon Basin\""), (6.5, "Ana", "trip out"),
            (6.75, "Ana", "catch log species:walleye length:20in"), (8, "Bo", "trip out back:17:00"),
            (9, "Bo", "catch log species:walleye length:21in"), (10, "Bo", "catch log species:walleye length:31in water:\"Tamarack Bay\""),
            (16, "Ana", "trip back"), (16.5, "Bo", "catch log species:walleye length:22in water:\"Loon Basin\""), (17, "Bo", "trip back"),
            (18, "Bo", "catch log species:walleye length:32in water:\"Loon Basin\""),
        ])
        {
            _room.Now = day.AddHours(hour);
            Assert.Null((await _room.SayAsync(line, who)).Problem);
        }

        _room.Now = day.AddDays(3);
        var board = await _room.SayAsync("catch leaders span:trip");

        Assert.Equal("Leaders, trip 1 on Loon Basin: 3 fish", board.Headline);
        Assert.Contains("Longest walleye: 22 in (55.9 cm), Bo (#5).", board.Lines);
        Assert.Equal(board.Headline, (await _room.SayAsync("catch leaders trip:1")).Headline);
        Assert.StartsWith("Leaders, this season: ", (await _room.SayAsync("catch leaders")).Headline, StringComparison.Ordinal);
        Assert.Equal("Leaders, trip 1 on Tamarack Bay: 1 fish", (await _room.SayAsync("catch leaders trip:1 water:\"Tamarack Bay\"")).Headline);
        Assert.Contains("no trip 7", (await _room.SayAsync("catch leaders trip:7")).Problem, StringComparison.Ordinal);
        Assert.Contains("goes with span:trip", (await _room.SayAsync("catch leaders span:month trip:1")).Problem, StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
