using CrewBot.Chat.Commands;
using CrewBot.Storage.Trips;

namespace CrewBot.Chat.Tests.Trips;

/// <summary>A trip is planned, answered and cancelled; what cannot be read is refused in one line.</summary>
public sealed class TripPlanTests : IAsyncDisposable
{
    private readonly CrewRoom _room = new();

    [Fact]
    public async Task Plan_WaterAndMeetAlone_AssumesTheReturnAndPutsThePlannerOnIt()
    {
        var card = await _room.PlanTripAsync();

        Assert.Null(card.Problem);
        Assert.Equal("Trip 1: Loon Basin, Sun 17 Jan 07:00, off the ice by 16:00", card.Headline);
        Assert.Contains("In: 1 person: Ana.", card.Lines);
        Assert.True(card.Lines.Count <= 8);
    }

    // Clocks in Winnipeg went from 02:00 to 03:00 on 14 March 2027 (IANA tz database): 07:00 is 12:00 UTC, one hour earlier than the day before.
    [Theory]
    [InlineData("2027-03-13 07:00", "Sat 13 Mar 07:00")]
    [InlineData("2027-03-14 07:00", "Sun 14 Mar 07:00")]
    [InlineData("2027-03-14 02:30", "Sun 14 Mar 03:30")]
    public async Task Plan_AcrossAClockChange_MeetsByTheCrewsClock(string meet, string shown)
    {
        await _room.SayAsync("crew setup zone:America/Winnipeg water:\"Loon Basin\"");

        Assert.Contains(shown, (await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"{meet}\"")).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tomorrow 7am")]
    [InlineData("sun 7:00 am")]
    [InlineData("2027-01-17 07:00")]
    public async Task Plan_TimeByEitherClock_IsTheSame(string meet)
    {
        await _room.SayAsync("crew setup water:\"Loon Basin\"");

        Assert.StartsWith("Trip 1: Loon Basin, Sun 17 Jan 07:00", (await _room.SayAsync($"trip plan water:\"Loon Basin\" meet:\"{meet}\"")).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("trip plan water:\"Loon Basin\" meet:\"tomorrow 07:00\" return:06:00", "give a later one, such as return:16:00, or return:\"2027-01-18 06:00\" across midnight.")]
    [InlineData("trip plan water:\"Loon Basin\" meet:\"2027-01-02 07:00\"", "has passed")]
    [InlineData("trip plan water:\"Loon Basin\" meet:soon", "can't read 'soon'")]
    [InlineData("trip plan water:\"Lune Basin\" meet:07:00", "is no water of this crew")]
    [InlineData("trip join answer:in party:0", "party: '0' is not a whole number from 1 to 40.")]
    [InlineData("trip join answer:in party:500", "party: '500' is not a whole number from 1 to 40.")]
    [InlineData("trip join answer:in party:2 children:2", "party counts you too")]
    [InlineData("trip join answer:in with:Zed", "'Zed' has not answered for this trip")]
    [InlineData("trip join trip:9 answer:in", "There is no trip 9.")]
    [InlineData("trip bring item:hub seats:-3", "seats: '-3' is not a whole number from 1 to 12.")]
    [InlineData("trip bring item:augur", "'augur' is not known. Nearest: hand auger")]
    [InlineData("trip bring item:shetler", "'shetler' is not known. Nearest: ")]
    [InlineData("trip bring item:zebrastripe", "'zebrastripe' is not known. Gear of your own:")]
    [InlineData("trip bring item:\"2 augers\"", "How many of it goes into count: /trip bring trip:1 item:\"power auger\" count:2")]
    [InlineData("trip bring item:smokehouse as:shelter", "How many sit in 'smokehouse'?")]
    [InlineData("trip need mine:\"CO alarm\"", "No CO alarm is missing")]
    [InlineData("trip need waive:picks", "ice picks can be waived by nobody")]
    [InlineData("trip back", "You are not out on this trip")]
    [InlineData("trip late by:3min", "out of range")]
    [InlineData("trip out back:2027-01-10 10:00", "has passed")]
    public async Task BadInput_OnATrip_IsRefusedInOneLine(string line, string part)
    {
        await _room.PlanTripAsync();

        var reply = await _room.SayAsync(line);

        Assert.Contains(part, reply.Problem, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', reply.Problem!);
    }

    // A crew's own file may have known the fish, and may be gone: whoever is out there must still be looked for.
    [Theory]
    [InlineData("trip show")]
    [InlineData("trip pack")]
    [InlineData("trip out back:10:00")]
    public async Task Answer_FishThatIsNotKnownAnyMore_GoesByItsKey(string line)
    {
        await _room.PlanTripAsync();
        await _room.WriteAsync(async session =>
        {
            var trips = new TripRepository(session);
            await trips.SaveAsync((await trips.FindAsync(1))! with { Species = "basin-herring" });
        });
        _room.Now += TimeSpan.FromHours(12);

        Assert.Null((await _room.SayAsync(line)).Problem);
        Assert.Contains("After basin-herring.", (await _room.SayAsync("trip show")).Lines);
    }

    [Fact]
    public async Task Join_PastTrip_IsOver()
    {
        await _room.PlanTripAsync();
        _room.Now += TimeSpan.FromDays(2);

        Assert.Contains("it is over", (await _room.SayAsync("trip join trip:1 answer:in", "Bo")).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cancel_ByAnotherMember_IsRefusedAndWithSomebodyOutToo()
    {
        await _room.PlanTripAsync();
        await _room.SayAsync("trip join answer:in", "Bo", Role.Member);

        Assert.Contains("Trip 1 is Ana's", (await _room.SayAsync("trip cancel", "Bo", Role.Member)).Problem, StringComparison.Ordinal);
        await _room.SayAsync("trip out", "Bo", Role.Member);
        Assert.Contains("Bo is still on the ice", (await _room.SayAsync("trip cancel")).Problem, StringComparison.Ordinal);
        await _room.SayAsync("trip back", "Bo", Role.Member);
        Assert.EndsWith("Cancelled", (await _room.SayAsync("trip cancel")).Headline, StringComparison.Ordinal);
        Assert.Contains("No trip is planned", (await _room.SayAsync("trip show")).Problem, StringComparison.Ordinal);
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();
}
