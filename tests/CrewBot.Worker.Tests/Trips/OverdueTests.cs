namespace CrewBot.Worker.Tests.Trips;

/// <summary>Parties that are not back in time, with the bot stopped and started between any two moments.</summary>
public sealed class OverdueTests : IDisposable
{
    private const string Day = "2027-01-16";
    private const string Alarm = "OVERDUE: Hal and party (3), to be back by Sat 16 Jan 15:00";

    private static readonly string[] AlarmInBoth = [$"room!: {Alarm}", $"shore! @watch: {Alarm}"];

    private readonly TripStation _station = new();

    [Fact]
    public async Task Overdue_NobodySaysBack_IsAnnouncedOnTimeAndAgainUntilSomebodyDoes()
    {
        await GoOutAsync();

        Assert.Empty(await AlertsAsync("15:29"));
        Assert.Equal(AlarmInBoth, await AlertsAsync("15:30"));
        Assert.Empty(await AlertsAsync("15:31"));
        Assert.Equal(AlarmInBoth, await AlertsAsync("16:00"));
        Assert.Null((await _station.SayAsync($"{Day} 16:10", "Ana", "trip back who:Hal")).Problem);

        var clear = await AlertsAsync("16:11");
        Assert.Equal(4, clear.Count(line => line.Contains("edited: No longer overdue: Hal and party (3) back at 16:10", StringComparison.Ordinal)));
        Assert.Equal(["room!: No longer overdue: Hal and party (3) back at 16:10", "shore!: No longer overdue: Hal and party (3) back at 16:10"],
            clear.Where(line => !line.Contains("edited", StringComparison.Ordinal)));
        Assert.Empty(await AlertsAsync("23:00"));
    }

    [Fact]
    public async Task Overdue_Announced_SaysWhereWhoAndWhomToCall()
    {
        await GoOutAsync();
        await AlertsAsync("15:30");

        var alert = _station.Bodies["OVERDUE:"];
        Assert.Contains("Last known: Loon Basin, the north hump, out since 07:35.", alert.Lines);
        Assert.Contains(alert.Lines, line => line.Contains("met at the landing", StringComparison.Ordinal) && line.Contains("after Walleye", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(alert.Lines, line => line.Contains("call 112", StringComparison.Ordinal));
        Assert.Contains(alert.Lines, line => line.StartsWith("The bot calls nobody.", StringComparison.Ordinal));
        Assert.True(alert.Lines.Count <= 8);
    }

    [Fact]
    public async Task Overdue_ProcessWasDown_IsAnnouncedOnceSayingLateAndGoesOnInItsRhythm()
    {
        await GoOutAsync();

        Assert.Equal(AlarmInBoth.Select(line => $"{line} (late)"), await AlertsAsync("18:07"));
        Assert.Empty(await AlertsAsync("18:29"));
        Assert.Equal(AlarmInBoth, await AlertsAsync("18:30"));
    }

    [Fact]
    public async Task Late_BeforeTheAlert_MovesIt()
    {
        await GoOutAsync();
        await _station.SayAsync($"{Day} 14:50", "Hal", "trip late by:+1h");

        Assert.Empty(await AlertsAsync("15:30"));
        Assert.Equal(2, (await AlertsAsync("16:30")).Count(line => line.Contains("to be back by Sat 16 Jan 16:00", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Late_AfterTheAlert_EndsItAndStartsAnother()
    {
        await GoOutAsync();
        await AlertsAsync("15:30");
        await _station.SayAsync($"{Day} 15:40", "Hal", "trip late by:30min");

        Assert.Contains("room!: No longer overdue: Hal and party (3) said to be late, back by 16:10", await AlertsAsync("15:41"));
        Assert.Empty(await AlertsAsync("16:39"));
        Assert.Equal(2, (await AlertsAsync("16:40")).Count(line => line.Contains("16:10", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Back_InTime_AlertsNobody()
    {
        await GoOutAsync();
        await _station.SayAsync($"{Day} 15:20", "Hal", "trip back");

        Assert.Empty(await AlertsAsync("23:00"));
    }

    [Fact]
    public async Task Cancel_EverybodyBack_AlertsNobody()
    {
        await GoOutAsync();
        await _station.SayAsync($"{Day} 09:00", "Hal", "trip back");
        Assert.Null((await _station.SayAsync($"{Day} 09:05", "Ana", "trip cancel")).Problem);

        Assert.Empty(await AlertsAsync("23:00"));
    }

    // Clocks went from 02:00 to 01:00 on 7 November 2027 (IANA tz database): 25 hours lie between two noons.
    [Fact]
    public async Task Overdue_OverAClockChange_GoesByTheCrewsClock()
    {
        await SetUpAsync("2027-11-05 19:00");
        await _station.SayAsync("2027-11-05 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"2027-11-06 12:00\" return:\"2027-11-07 12:00\"");
        Assert.Null((await _station.SayAsync("2027-11-06 12:00", "Ana", "trip out")).Problem);

        Assert.Empty(Alerts(await _station.RunAsync("2027-11-07 12:29")));
        Assert.Equal(2, Alerts(await _station.RunAsync("2027-11-07 12:30")).Count);
    }

    public void Dispose() => _station.Dispose();

    private async Task GoOutAsync()
    {
        await SetUpAsync("2027-01-13 19:00");
        await _station.SayAsync("2027-01-13 19:05", "Ana", "trip plan water:\"Loon Basin\" meet:\"saturday 07:00\" return:16:00 place:\"the landing\" species:walleye");
        await _station.SayAsync("2027-01-13 19:10", "Hal", "trip join answer:in party:3");
        Assert.Null((await _station.SayAsync($"{Day} 07:35", "Hal", "trip out back:15:00 spot:\"the north hump\"")).Problem);
    }

    private async Task SetUpAsync(string at)
    {
        await _station.SayAsync(at, "Ana", "crew setup zone:America/Winnipeg water:\"Loon Basin\" for:contact channel:shore");
        await _station.SayAsync(at, "Ana", "crew setup contact-role:watch emergency:112");
    }

    private async Task<IReadOnlyList<string>> AlertsAsync(string clock) => Alerts(await _station.RunAsync($"{Day} {clock}"));

    private static List<string> Alerts(IReadOnlyList<string> heard) =>
        [.. heard.Where(line => line.Contains("verdue", StringComparison.OrdinalIgnoreCase))];
}
