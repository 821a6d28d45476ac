namespace CrewBot.Worker.Tests.Trips;

/// <summary>Somebody who is named in what a trip said leaves, with the bot stopped and started between any two moments.</summary>
public sealed class ErasedTests : IDisposable
{
    private readonly TripStation _station = new();

    // Seats, needs and counts are for those who come.
    [Fact]
    public async Task Erase_BeforeTheTrip_TakesThemOffItAndTheMessageThatStandsIsEdited()
    {
        await PlanAsync();
        foreach (var (who, line) in ((string, string)[])
        [
            ("Hal", "trip bring item:\"large hub\""), ("Hal", "trip need waive:auger"), ("Bo", "trip join answer:in with:Hal"), ("Bo", "trip bring item:\"throw rope\""),
            ("Ana", "trip seats"),
        ])
        {
            Assert.Null((await _station.SayAsync("2027-01-13 19:20", who, line)).Problem);
        }

        await _station.RunAsync("2027-01-13 19:30");

        Assert.Null((await _station.SayAsync("2027-01-13 20:00", "Hal", "crew privacy do:erase confirm:yes")).Problem);

        Assert.StartsWith("room edited: Trip 1: Loon Basin", Assert.Single(await _station.RunAsync("2027-01-13 20:01")), StringComparison.Ordinal);
        Assert.Contains("In: 2 people: Ana, Bo.", _station.Bodies["Trip"].Lines);
        Assert.Contains("Brought: 1 throw rope.", _station.Bodies["Trip"].Lines);
        Assert.Contains("1 auger", _station.Bodies["Trip"].Lines.Single(line => line.StartsWith("Missing:", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Equal("Not everybody can sit. Nobody brings a shelter: 2 seats are missing.", (await _station.SayAsync("2027-01-13 20:02", "Ana", "trip seats")).Problem);
        await _station.RunAsync("2027-01-15 18:00");
        Assert.Contains("In: 2 people: Ana, Bo.", _station.Bodies["Tomorrow:"].Lines);
    }

    // A trip that somebody was on is part of the season: that they came stays, as a former angler.
    [Fact]
    public async Task Erase_AfterTheTrip_TheyStayOnIt()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-16 07:35", "Hal", "trip out");
        await _station.SayAsync("2027-01-16 15:35", "Hal", "trip back");

        Assert.Null((await _station.SayAsync("2027-01-16 20:00", "Hal", "crew privacy do:erase confirm:yes")).Problem);

        Assert.Contains("In: 4 people: Ana, former angler +2.", (await _station.SayAsync("2027-01-16 20:01", "Ana", "trip show trip:1")).Lines);
    }

    // Whoever is on the ice is still looked for; the buttons under the alert work on.
    [Fact]
    public async Task Erase_OnTheIce_IsStillAnnouncedAsOverdueWithoutTheNameAndCanBeSaidToBeBack()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-16 07:35", "Hal", "trip out back:15:00 spot:\"the north hump\"");
        await _station.SayAsync("2027-01-16 08:00", "Hal", "crew privacy do:erase confirm:yes");

        Assert.Contains("room!: OVERDUE: former angler and party (3), to be back by Sat 16 Jan 15:00", await _station.RunAsync("2027-01-16 15:30"));
        var alert = _station.Bodies["OVERDUE:"];
        Assert.Contains("Last known: Loon Basin, the north hump, out since 07:35.", alert.Lines);
        var back = alert.Actions.Single(action => action.Path == "trip back");
        Assert.Null((await _station.SayAsync("2027-01-16 15:40", "Ana", back.Command)).Problem);
    }

    [Fact]
    public async Task Erase_CardOfTheirOwnWaits_IsNeverSent()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-13 20:00", "Hal", "crew privacy do:erase confirm:yes");

        Assert.DoesNotContain(await _station.RunAsync("2027-01-15 18:00"), heard => heard.StartsWith("@Hal", StringComparison.Ordinal));
    }

    public void Dispose() => _station.Dispose();

    private async Task PlanAsync()
    {
        await _station.SayAsync("2027-01-13 19:00", "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        await _station.SayAsync("2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00");
        await _station.SayAsync("2027-01-13 19:10", "Hal", "trip join answer:in party:3");
    }
}
