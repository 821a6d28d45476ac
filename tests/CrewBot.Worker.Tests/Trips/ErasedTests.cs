namespace CrewBot.Worker.Tests.Trips;

/// <summary>Somebody who is named in what a trip said leaves, with the bot stopped and started between any two moments.</summary>
public sealed class ErasedTests : IDisposable
{
    private readonly TripStation _station = new();

    [Fact]
    public async Task Erase_NamedOnTheCard_EditsTheMessageThatStandsAndSaysNothingElse()
    {
        await PlanAsync();
        await _station.RunAsync("2027-01-13 19:30");

        Assert.Null((await _station.SayAsync("2027-01-13 20:00", "Hal", "crew privacy do:erase confirm:yes")).Problem);

        Assert.StartsWith("room edited: Trip 1: Loon Basin", Assert.Single(await _station.RunAsync("2027-01-13 20:01")), StringComparison.Ordinal);
        Assert.Contains("In: 4 people: Ana, former angler +2.", _station.Bodies["Trip"].Lines);
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
