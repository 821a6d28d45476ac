using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>Who sits in which shelter.</summary>
public sealed class TripSeatsTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Seats_AfterADropOut_MoveNobodyWhoCanStay()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip bring item:hub");
        await _room.SayAsync("trip join answer:in party:3 children:2", "Bo");
        await _room.SayAsync("trip bring item:\"red barn\" as:shelter seats:5", "Bo");
        await _room.SayAsync("trip join answer:in", "Cy");
        var before = await _room.SayAsync("trip seats");
        await _room.SayAsync("trip join answer:out", "Cy");

        var after = await _room.SayAsync("trip seats");

        Assert.Null(before.Problem);
        Assert.Equal(4, after.Figures.Single(figure => figure.Key == "trip.people").Value);
        Assert.Equal(0, after.Figures.Single(figure => figure.Key == "trip.moved").Value);
    }

    [Fact]
    public async Task Seats_PictureWhyAndShare_OnlyLook()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip bring item:hub");
        var told = await _room.SayAsync("trip seats");
        await _room.SayAsync("trip join answer:in", "Bo");
        var before = await _room.BytesAsync();

        foreach (var action in told.Actions)
        {
            var looked = await _room.SayAsync(action.Command);
            Assert.Contains("Not told yet: /trip seats tells it.", looked.Lines);
            Assert.Single(looked.Pictures);
        }

        Assert.Equal([ActionKind.Picture, ActionKind.Why, ActionKind.Share], told.Actions.Select(action => action.Kind));
        Assert.Equal(before, await _room.BytesAsync());
        await _room.SayAsync("trip seats");
        Assert.DoesNotContain((await _room.SayAsync("trip seats look:yes")).Lines, line => line.StartsWith("Not told", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Seats_TooFew_NamesTheObstacle()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in party:5");
        await _room.SayAsync("trip bring item:hub");

        Assert.Equal("Not everybody can sit. 5 people and 4 seats: 1 seat missing.", (await _room.SayAsync("trip seats")).Problem);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
