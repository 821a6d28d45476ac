namespace CrewBot.Chat.Tests.Trips;

/// <summary>What a trip says of the ice: its load, and the card.</summary>
public sealed class TripIceTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    // One person at 100 kg and a cabin of 140 kg.
    [Fact]
    public async Task Load_WithoutAMeasurement_GivesNoThickness()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip bring item:cabin");

        var reply = await _room.SayAsync("trip load");

        Assert.Equal(240, reply.Figures.Single(figure => figure.Key == "trip.load").Value, tolerance: 1e-9);
        Assert.Contains(reply.Lines, line => line.StartsWith("No spot was named, so nothing measured stands beside it", StringComparison.Ordinal));
        Assert.DoesNotContain(reply.Lines.Append(reply.Headline), line => line.Contains(" in ", StringComparison.Ordinal) && line.Contains("cm", StringComparison.Ordinal));
    }

    // Two people at 100 kg and a cabin of 140 kg: 340 kg, 0.375 short tons; 8 √0.375 = 4.9 in for what stands (Smith 2004), and
    // the table of the guides asks for more of a gathering.
    [Fact]
    public async Task Load_MeasuredThereToday_IsSetBesideThePublishedRules()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in", "Bo");
        await _room.SayAsync("trip bring item:cabin");
        Assert.Null((await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"north hump\" clear:5in")).Problem);

        var thin = await _room.SayAsync("trip load spot:\"north hump\" warmest:10F");
        var elsewhere = await _room.SayAsync("trip load spot:\"south bay\" warmest:10F");

        Assert.Contains(thin.Lines, line => line.StartsWith("Measured there: least 5 in", StringComparison.Ordinal));
        Assert.Contains(thin.Lines, line => line.Contains("LESS was measured", StringComparison.Ordinal));
        Assert.Contains(elsewhere.Lines, line => line.StartsWith("No measurement of today at that spot: no answer", StringComparison.Ordinal));
        Assert.DoesNotContain(elsewhere.Lines, line => line.Contains("ask for", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Pack_IceReportedAfterwards_IsOnTheCardWithItsHour()
    {
        await _room.PlanTripAsync();
        Assert.Contains((await _room.SayAsync("trip pack")).Lines, line => line.StartsWith("Ice: the board has no fresh measurement", StringComparison.Ordinal));
        await _room.SayAsync("ice report water:\"Loon Basin\" spot:\"north hump\" clear:5in");

        Assert.Contains((await _room.SayAsync("trip pack")).Lines, line =>
            line.StartsWith("Ice: north hump, 5 in (12.7 cm) clear, by Ana, Sat 16 Jan 20:00", StringComparison.Ordinal));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
