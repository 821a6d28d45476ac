using CrewBot.Worker.Tests.Trips;

namespace CrewBot.Worker.Tests.Derbies;

/// <summary>What a derby says unasked, with the bot stopped and started between any two moments.</summary>
public sealed class DerbyPostsTests : IDisposable
{
    private const string Day = "2027-01-16";

    private readonly TripStation _station = new();

    [Fact]
    public async Task Calls_StartAndAnHourLeft_AreSaidOnceEach()
    {
        await CreateAsync();

        Assert.Empty(await RunAsync("07:59"));
        Assert.Equal(["room: Basin day has started: until 15:00"], await RunAsync("08:00"));
        Assert.Empty(await RunAsync("13:59"));
        Assert.Equal(["room: An hour left in Basin day: until 15:00"], await RunAsync("14:00"));
        Assert.Empty(await RunAsync("14:59"));
    }

    [Fact]
    public async Task Calls_BotWasDownWhenTheyWereDue_AreDropped()
    {
        await CreateAsync();

        Assert.Empty(await RunAsync("08:31"));
        Assert.Empty(await RunAsync("14:06"));
    }

    [Fact]
    public async Task Calls_DerbyIsClosedBefore_AreNotSaid()
    {
        await CreateAsync();
        await SayAsync("07:30", "Ana", "derby close");

        Assert.Equal(["room: Basin day is closed"], await RunAsync("08:00"));
        Assert.Empty(await RunAsync("14:00"));
    }

    [Fact]
    public async Task Calls_DerbyThatStartsAtOnce_DoNotSayThatItStarts()
    {
        await SayAsync("08:00", "Ana", "derby create name:Now ends:15:00");

        Assert.Empty(await RunAsync("08:00"));
    }

    [Fact]
    public async Task Standings_AsFishComeIn_AreOneMessageThatIsEdited()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        Assert.Equal("room: Basin day: on until 15:00, 3 anglers", Assert.Single(await StandingsAsync("08:11")));
        await FishAsync("08:20", "Bo", "19in");
        await FishAsync("08:20", "Cy", "18in");

        Assert.Equal("room edited: Basin day: on until 15:00, 3 anglers", Assert.Single(await StandingsAsync("08:21")));
        Assert.Equal(["1. Ana 20 in: walleye 20 in", "2. Bo 19 in: walleye 19 in", "3. Cy 18 in: walleye 18 in"], _station.Bodies["Basin"].Lines);
        Assert.Empty(await StandingsAsync("08:30"));
    }

    [Fact]
    public async Task Standings_CatchIsVoidedInTheLog_LeaveItOut()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        await RunAsync("08:11");
        await SayAsync("08:20", "Ana", "catch void catch:1");

        Assert.Single(await StandingsAsync("08:21"));
        Assert.Equal(["No fish counts yet."], _station.Bodies["Basin"].Lines);
    }

    [Fact]
    public async Task Leader_Changes_IsAnnouncedAtMostOnceInFiveMinutes()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        Assert.Equal(["room: Ana leads Basin day with 20 in"], await LeadersAsync("08:10"));
        await FishAsync("08:11", "Bo", "21in");
        Assert.Empty(await LeadersAsync("08:11"));
        await FishAsync("08:12", "Cy", "22in");
        Assert.Empty(await LeadersAsync("08:14"));

        Assert.Equal(["room: Cy leads Basin day with 22 in"], await LeadersAsync("08:15"));
        Assert.Empty(await LeadersAsync("08:30"));
    }

    [Fact]
    public async Task Leader_WhoWasAnnouncedLeadsAgainBeforeTheNext_IsNoNews()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        await LeadersAsync("08:10");
        await FishAsync("08:11", "Bo", "21in");
        await FishAsync("08:12", "Ana", "22in");

        Assert.Empty(await LeadersAsync("08:20"));
    }

    [Fact]
    public async Task Leader_TwoAreLevel_IsAnnouncedWhenTheyAreParted()
    {
        await SayAsync("07:00", "Ana", "derby create name:\"Basin day\" starts:08:00 ends:15:00 ties:shared evidence:\"own word\"");
        await SayAsync("07:10", "Ana", "derby join");
        await SayAsync("07:10", "Bo", "derby join");
        await RunAsync("08:00");
        await FishAsync("08:10", "Ana", "20in");
        await LeadersAsync("08:10");
        await FishAsync("08:20", "Bo", "20in");
        Assert.Empty(await LeadersAsync("08:20"));

        await FishAsync("08:30", "Bo", "12in");

        Assert.Equal(["room: Bo leads Basin day with 32 in"], await LeadersAsync("08:30"));
    }

    [Fact]
    public async Task Leader_BotWasDown_IsDroppedAsOldNews()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");

        Assert.Empty(await LeadersAsync("08:16"));
    }

    [Fact]
    public async Task Results_DerbyIsClosed_FollowWhenProtestsAreOver()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        await RunAsync("08:10");
        await SayAsync("15:20", "Ana", "derby close");

        Assert.Contains("room: Basin day is closed", await RunAsync("15:20"));
        Assert.Empty(await RunAsync("16:15"));
        Assert.Equal(["room: Results of Basin day, final"], await RunAsync("16:16"));
        Assert.Empty(await RunAsync("18:00"));
    }

    [Fact]
    public async Task Results_BotWasDown_AreSaidAllTheSame()
    {
        await CreateAsync();
        await SayAsync("15:20", "Ana", "derby close");
        await RunAsync("15:21");

        Assert.Equal(["room: Results of Basin day, final"], await RunAsync("23:00"));
    }

    [Fact]
    public async Task Results_DerbyIsReopenedBefore_AreTakenBackAndSaidAfterTheNextClose()
    {
        await CreateAsync();
        await SayAsync("15:20", "Ana", "derby close");
        await RunAsync("15:20");
        await SayAsync("15:30", "Ana", "derby reopen");
        Assert.Empty(await RunAsync("16:20"));
        await SayAsync("16:30", "Ana", "derby close");

        Assert.Equal(["room: Basin day is closed", "room: Results of Basin day, final"], await RunAsync("16:30"));
    }

    [Fact]
    public async Task Results_FishBecomesVoidAfterwards_AreEdited()
    {
        await CreateAsync();
        await FishAsync("08:10", "Ana", "20in");
        await RunAsync("08:10");
        await SayAsync("15:20", "Ana", "derby close");
        await RunAsync("16:20");
        await SayAsync("17:00", "Ana", "catch void catch:1");

        Assert.Contains("room edited: Results of Basin day, final", await RunAsync("17:01"));
    }

    [Fact]
    public async Task Posts_CrewHasAChannelForDerbies_GoThere()
    {
        await SayAsync("06:00", "Ana", "crew setup zone:America/Winnipeg for:derby channel:scales");
        await CreateAsync();

        Assert.Equal(["scales: Basin day has started: until 15:00"], await RunAsync("08:00"));
    }

    [Fact]
    public async Task Posts_SomebodyIsErased_NameThemNoMore()
    {
        await CreateAsync();
        await FishAsync("08:10", "Bo", "20in");
        await RunAsync("08:10");
        await SayAsync("08:20", "Bo", "crew privacy do:erase confirm:yes");

        Assert.Equal(
            ["room edited: Basin day: on until 15:00, 3 anglers", "room edited: former angler leads Basin day with 20 in"], await RunAsync("08:21"));
        Assert.Equal(["1. former angler 20 in: walleye 20 in"], _station.Bodies["Basin"].Lines);
    }

    public void Dispose() => _station.Dispose();

    private async Task CreateAsync()
    {
        await SayAsync("07:00", "Ana", "crew setup zone:America/Winnipeg");
        await SayAsync("07:00", "Ana", "derby create name:\"Basin day\" starts:08:00 ends:15:00 evidence:\"own word\"");
        foreach (var angler in (string[])["Ana", "Bo", "Cy"])
        {
            await SayAsync("07:10", angler, "derby join");
        }
    }

    private Task FishAsync(string time, string who, string length) => SayAsync(time, who, $"derby enter species:walleye length:{length}");

    private async Task SayAsync(string time, string who, string line) => Assert.Null((await _station.SayAsync($"{Day} {time}", who, line)).Problem);

    private Task<IReadOnlyList<string>> RunAsync(string time) => _station.RunAsync($"{Day} {time}");

    private async Task<IEnumerable<string>> StandingsAsync(string time) => (await RunAsync(time)).Where(said => said.Contains(": Basin day:", StringComparison.Ordinal));

    private async Task<IEnumerable<string>> LeadersAsync(string time) => (await RunAsync(time)).Where(said => said.Contains(" leads ", StringComparison.Ordinal));
}
