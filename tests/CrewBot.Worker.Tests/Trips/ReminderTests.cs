namespace CrewBot.Worker.Tests.Trips;

/// <summary>What a trip says before it begins, with the bot stopped and started between any two moments.</summary>
public sealed class ReminderTests : IDisposable
{
    private readonly TripStation _station = new();

    [Fact]
    public async Task Reminders_EveningBeforeAndTwoHoursBefore_AreSaidOnceEach()
    {
        await PlanAsync();

        Assert.Empty(await SaidAsync("2027-01-15 17:59", "room: "));
        Assert.Equal(["room: Tomorrow: Loon Basin, Sat 16 Jan 07:00, the landing"], await SaidAsync("2027-01-15 18:00", "room: "));
        Assert.Empty(await SaidAsync("2027-01-16 04:59", "room: "));
        Assert.Equal(["room: In 2 hours: Loon Basin, Sat 16 Jan 07:00, the landing"], await SaidAsync("2027-01-16 05:00", "room: "));
        Assert.Empty(await SaidAsync("2027-01-16 06:59", "room: "));
    }

    [Fact]
    public async Task Reminder_TripIsMovedMeanwhile_GoesByTheNewTime()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-14 08:00", "Ana", "trip change meet:\"2027-01-17 09:00\"");

        Assert.Empty(await SaidAsync("2027-01-15 18:00", "room: "));
        Assert.Equal(["room: Tomorrow: Loon Basin, Sun 17 Jan 09:00, the landing"], await SaidAsync("2027-01-16 18:00", "room: "));
    }

    [Fact]
    public async Task Reminder_SomebodyJoinsMeanwhile_SaysWhoComesNow()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-15 17:50", "Bo", "trip join answer:in party:2");
        await SaidAsync("2027-01-15 18:00", "room: ");

        Assert.Contains("In: 3 people: Ana, Bo +1.", _station.Bodies["Tomorrow:"].Lines);
    }

    [Fact]
    public async Task Cancel_BeforeTheEvening_RemindsNobodyAndTheCardSaysSo()
    {
        await PlanAsync();
        await _station.RunAsync("2027-01-13 19:06");
        await _station.SayAsync("2027-01-14 08:00", "Ana", "trip cancel");

        Assert.EndsWith("Cancelled", Assert.Single(await _station.RunAsync("2027-01-16 08:00")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Card_AsThingsChange_IsOneMessageThatIsEdited()
    {
        await PlanAsync();
        Assert.StartsWith("room: Trip 1: Loon Basin", Assert.Single(await SaidAsync("2027-01-13 19:06", "room")), StringComparison.Ordinal);
        await _station.SayAsync("2027-01-13 20:00", "Bo", "trip join answer:in");
        await _station.SayAsync("2027-01-13 20:00", "Cy", "trip join answer:maybe");

        Assert.StartsWith("room edited: Trip 1: Loon Basin", Assert.Single(await SaidAsync("2027-01-13 20:01", "room")), StringComparison.Ordinal);
        Assert.Contains("In: 2 people: Ana, Bo.", _station.Bodies["Trip"].Lines);
        Assert.Contains("Maybe: 1 person: Cy.", _station.Bodies["Trip"].Lines);
    }

    [Fact]
    public async Task PocketCard_TheEveningBefore_GoesToEverybodyWhoComesWithWhatTheyBring()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-13 20:00", "Bo", "trip join answer:in");
        await _station.SayAsync("2027-01-13 20:01", "Cy", "trip join answer:maybe");
        await _station.SayAsync("2027-01-13 20:02", "Bo", "trip bring item:\"throw rope\"");

        var cards = await SaidAsync("2027-01-15 18:00", "@");

        Assert.Equal(
            ["@Ana: Pocket card: Loon Basin, Sat 16 Jan 07:00, the landing", "@Bo: Pocket card: Loon Basin, Sat 16 Jan 07:00, the landing"], cards);
    }

    [Fact]
    public async Task PocketCard_ChangesAfterTheEvening_ReachWhoHasOneAndWhoJoinsLate()
    {
        await PlanAsync();
        await _station.RunAsync("2027-01-15 18:00");
        await _station.SayAsync("2027-01-15 21:00", "Bo", "trip join answer:in");
        await _station.SayAsync("2027-01-15 21:01", "Bo", "trip bring item:\"throw rope\"");

        var cards = await SaidAsync("2027-01-15 21:02", "@");

        Assert.Equal(["@Ana edited: Pocket card: Loon Basin, Sat 16 Jan 07:00, the landing", "@Bo: Pocket card: Loon Basin, Sat 16 Jan 07:00, the landing"], cards);
        await _station.SayAsync("2027-01-16 08:00", "Bo", "trip out");
        Assert.Empty(await SaidAsync("2027-01-16 08:01", "@"));
    }

    [Fact]
    public async Task PocketCard_IceIsReportedBeforeTheEvening_CarriesIt()
    {
        await PlanAsync();
        await _station.SayAsync("2027-01-15 14:00", "Bo", "ice report water:\"Loon Basin\" spot:\"north hump\" clear:9in");
        await _station.RunAsync("2027-01-15 18:00");

        Assert.Contains(_station.Bodies["Pocket"].Lines, line => line.StartsWith("Ice: north hump, 9 in", StringComparison.Ordinal));
    }

    public void Dispose() => _station.Dispose();

    private async Task PlanAsync()
    {
        await _station.SayAsync("2027-01-13 19:00", "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\"");
        Assert.Null((await _station.SayAsync(
            "2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00 place:\"the landing\" species:walleye")).Problem);
    }

    private async Task<IReadOnlyList<string>> SaidAsync(string local, string start) =>
        [.. (await _station.RunAsync(local)).Where(line => line.StartsWith(start, StringComparison.Ordinal) && !line.StartsWith("room: Trip", StringComparison.Ordinal) | start == "room")];
}
